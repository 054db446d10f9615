package dev.poleward.service.http;

import static dev.poleward.domain.history.HistoryCheck.forRecordings;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.ClubEvent.ClubRegistered;
import dev.poleward.domain.event.ClubEvent.PersonForgotten;
import dev.poleward.domain.event.Envelope;
import dev.poleward.domain.event.RegistryEvent.HandlerRegistered;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.history.GeneratedHistory;
import dev.poleward.domain.history.RecordedEvent;
import dev.poleward.domain.record.Announcement;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.References;
import dev.poleward.domain.record.Sealed;
import dev.poleward.service.journal.Entry;
import dev.poleward.service.page.HtmlPages;
import dev.poleward.service.page.PdfPages;
import dev.poleward.service.projection.FoldedRows;
import dev.poleward.service.projection.HistoryEntries;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The same events in any order, any number of times, in any portions: every read answers the same,
 * byte for byte. Two nodes have clubs of the same ids; to one everything comes in order and once.
 */
class EveryReadTest {

  private static final int HISTORIES = 250;
  private static final String SUSPICION = "a suspicion";
  private static final String PAGE = "a dog that attended a session of its class";
  private static final Pattern EVENT_STARTS = Pattern.compile("\\{\"specversion\"");
  private static final Pattern REPEATED = Pattern.compile("\"repeated\":[0-9]+");

  @TempDir private static Path folder;
  private static InMemoryParts parts;
  private static FoldedRows inOrder;
  private static FoldedRows otherwise;
  private static Routes routesInOrder;
  private static Routes routesOtherwise;

  @BeforeAll
  static void open() {
    parts = new InMemoryParts(folder);
    inOrder = new FoldedRows(folder.resolve("in-order"));
    otherwise = new FoldedRows(folder.resolve("otherwise"));
    routesInOrder = parts.routes(inOrder.reader());
    routesOtherwise = parts.routes(otherwise.reader());
  }

  @AfterAll
  static void close() {
    inOrder.close();
    otherwise.close();
    parts.close();
  }

  @Test
  void everyReadAnswersTheSameByteForByte() {
    Set<String> found = new TreeSet<>();
    forRecordings(
        HISTORIES,
        (events, random) -> {
          // Given
          String club = inOrder.aClub();
          List<RecordedEvent> registered = registered(events);
          List<Entry> entries = HistoryEntries.of(club, sealed(club, registered));

          // When
          inOrder.applyAll(HistoryEntries.inBatches(List.of(entries), random));
          List<Entry> shuffled = HistoryEntries.shuffled(entries, random);
          dropPersonal(shuffled, forgotten(registered), random);
          int some = random.nextInt(1 + shuffled.size());
          otherwise.applyAll(HistoryEntries.inBatches(List.of(shuffled.subList(0, some)), random));
          if (random.nextInt(4) == 0) {
            // What is remembered of an early look must not show later.
            answers(routesOtherwise, club, registered, new Random(some));
          }
          otherwise.applyAll(
              HistoryEntries.inBatches(List.of(shuffled.subList(some, shuffled.size())), random));
          forgotten(registered).forEach(person -> parts.forget(club, person));

          // Then
          long seed = random.nextLong();
          CompletableFuture<Map<String, String>> meanwhile =
              CompletableFuture.supplyAsync(
                  () -> answers(routesInOrder, club, registered, new Random(seed)));
          Map<String, String> other;
          try {
            other = answers(routesOtherwise, club, registered, new Random(seed));
          } finally {
            // Whatever comes of it, nobody may read on when the rows are closed.
            meanwhile.exceptionally(_ -> Map.of()).join();
          }
          Map<String, String> one = meanwhile.join();
          assertThat(other.keySet()).isEqualTo(one.keySet());
          one.forEach((read, answer) -> assertThat(other.get(read)).as(read).isEqualTo(answer));
          one.forEach((read, answer) -> addFound(found, read, answer));
        });
    assertThat(found.remove(SUSPICION)).as("some reps are suspected").isTrue();
    assertThat(found.remove(PAGE)).as("some dogs have a page in a report").isTrue();
    assertThat(found).hasSameElementsAs(routes().map(Routes.Known::path).toList());
  }

  private static void addFound(Set<String> found, String read, String answer) {
    if (answer.startsWith("200 ")) {
      found.add(read.substring(0, read.indexOf(' ')));
    }
    if (answer.contains("\"suspectedDuplicates\":[{")) {
      found.add(SUSPICION);
    }
    if (answer.contains("\"attended\":[{")) {
      found.add(PAGE);
    }
  }

  /** Without its registration a club answers nothing. */
  private static List<RecordedEvent> registered(List<RecordedEvent> events) {
    OffsetDateTime time = OffsetDateTime.parse("2026-03-01T09:00:00Z");
    List<RecordedEvent> all = new ArrayList<>(events);
    all.addFirst(
        new RecordedEvent(
            new Envelope("a-club", "/apps/field-notes", time, null, null, Map.of()),
            Instant.parse("2026-03-01T09:00:00Z"),
            new ClubRegistered("saltmarsh", "Saltmarsh", "Europe/Lisbon", null, null),
            null));
    return all;
  }

  /** With personal members that are really sealed. */
  private static List<RecordedEvent> sealed(String club, List<RecordedEvent> events) {
    return events.stream()
        .map(
            event ->
                new RecordedEvent(
                    event.envelope(), event.recorded(), event.event(), sealed(club, event)))
        .toList();
  }

  private static @Nullable Sealed sealed(String club, RecordedEvent event) {
    Sealed told = event.sealed();
    if (told == null) {
      return null;
    }
    String members =
        event.event() instanceof HandlerRegistered
            ? "{\"email\":\"%s@example.org\",\"name\":\"Inês\"}"
            : "{\"note\":\"%s, tired\"}";
    byte[] bytes = members.formatted(told.box()).getBytes(StandardCharsets.UTF_8);
    return parts.personKeys().seal(club, told.person(), event.id(), bytes).orElseThrow();
  }

  private static Set<String> forgotten(List<RecordedEvent> events) {
    return events.stream()
        .map(RecordedEvent::event)
        .filter(PersonForgotten.class::isInstance)
        .map(event -> ((PersonForgotten) event).handler())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** What comes after a forgetting comes without what is personal. */
  private static void dropPersonal(List<Entry> entries, Set<String> forgotten, Random random) {
    entries.replaceAll(
        entry -> {
          Sealed sealed = entry.sealed();
          return sealed != null && forgotten.contains(sealed.person()) && random.nextBoolean()
              ? new Entry(
                  entry.club(),
                  entry.envelope(),
                  entry.type(),
                  entry.data(),
                  Sealed.dropped(sealed.person()),
                  entry.recorded(),
                  entry.recordedGiven())
              : entry;
        });
  }

  private static Stream<Routes.Known> routes() {
    return routesInOrder.all().stream()
        .filter(route -> route.method().equals("GET") && route.path().contains("{club}"));
  }

  /** The answer of every read there is, by the read. */
  private static Map<String, String> answers(
      Routes routes, String club, List<RecordedEvent> events, Random random) {
    List<String> views = views(random);
    int limit = 1 + random.nextInt(4);
    boolean pictures = random.nextInt(HISTORIES_TO_A_PICTURE) == 0;
    // Painted from the same marks as the SVGs, and by far the dearest: of one view, whichever.
    List<String> painted = List.of(views.get(random.nextInt(views.size())));
    Map<String, String> answers = new TreeMap<>();
    for (Routes.Known route : routes.all()) {
      if (!route.method().equals("GET") || !route.path().contains("{club}")) {
        continue;
      }
      for (Map<String, String> inPath : inPaths(route, club, events)) {
        for (String form : forms(route, pictures)) {
          boolean dear = form.equals(Pictures.PNG) || form.equals(PdfPages.PDF);
          List<String> shown = dear ? painted : views;
          for (String query : queries(route, shown, limit, form)) {
            AskedRead read = new AskedRead(route, inPath, query, form, parts.hostKey());
            answers.put(route.path() + " " + read, told(read));
          }
        }
      }
    }
    return answers;
  }

  private static List<String> forms(Routes.Known route, boolean pictures) {
    return route.forms().stream().filter(form -> pictures || !isPainted(form)).toList();
  }

  private static boolean isPainted(String form) {
    return form.startsWith("image/") || form.equals(HtmlPages.HTML) || form.equals(PdfPages.PDF);
  }

  private static List<String> views(Random random) {
    String asOf = "asOf=" + GeneratedHistory.anyTime(random);
    String knownAt = "knownAt=" + GeneratedHistory.anyRecordingTime(random);
    return List.of("", random.nextBoolean() ? asOf : knownAt, asOf + "&" + knownAt);
  }

  private static final String REPORT = "/classes/{class}/report";
  private static final String PACK = "/field-pack";
  private static final Set<String> WITHOUT_VIEW =
      Set.of("/events", "/events/{event}", "/digest", "/access-keys", PACK);
  private static final Set<String> SINGLE =
      Set.of(
          "/digest",
          "/access-keys",
          "/dogs/{dog}/progress",
          "/dogs/{dog}/angle-mastery",
          "/dogs/{dog}/care",
          "/dogs/{dog}/faults",
          "/dogs/{dog}/reward-fade",
          "/dogs/{dog}/timing",
          "/dogs/{dog}/outlook",
          "/dogs/{dog}/starting-stage",
          "/dogs/{dog}/homework",
          "/dogs/{dog}/goals",
          "/dogs/{dog}/trials",
          "/dogs/{dog}/season",
          PACK,
          REPORT);

  /** Long enough for all that is generated, up to the day that the view ends with. */
  private static final String REPORT_FROM = "from=2026-02-20";

  /** A class that generated histories speak of, after all of it happened. */
  private static final String PACK_OF = "class=c-1&date=2026-03-06";

  /** Pictures take longer to paint than anything else, so few histories ask for them. */
  private static final int HISTORIES_TO_A_PICTURE = 25;

  private static final Map<String, List<String>> PICTURES =
      Map.of("/dogs/{dog}/angle-mastery", List.of("picture=curve", "picture=clock"));

  /** Every view of it, page by page where it has pages. */
  private static List<String> queries(
      Routes.Known route, List<String> views, int limit, String form) {
    String below = route.path().substring("/v1/clubs/{club}".length());
    List<String> queries = WITHOUT_VIEW.contains(below) ? List.of("") : views;
    boolean list = !below.endsWith("}") && !below.isEmpty() && !SINGLE.contains(below);
    int items = below.equals("/events") ? 1_000 : limit;
    return queries.stream()
        .map(query -> below.equals("/suspected-duplicates") ? with(query, "within=120") : query)
        .map(query -> below.equals(REPORT) ? with(query, REPORT_FROM) : query)
        .map(query -> below.equals(PACK) ? with(query, PACK_OF) : query)
        .map(query -> list ? with(query, "limit=" + items) : query)
        .flatMap(
            query ->
                form.startsWith("image/")
                    ? PICTURES.getOrDefault(below, List.of("")).stream()
                        .map(picture -> with(query, with(picture, "width=320")))
                    : Stream.of(query))
        .toList();
  }

  private static String with(String query, String more) {
    return query.isEmpty() ? more : query + "&" + more;
  }

  /**
   * What can stand in the open places of a path: whatever the events name, and what they do not.
   */
  private static List<Map<String, String>> inPaths(
      Routes.Known route, String club, List<RecordedEvent> events) {
    List<Map<String, String>> filled = new ArrayList<>();
    for (EntityKind kind : EntityKind.values()) {
      String place = kind.name().toLowerCase(Locale.ROOT);
      if (kind != EntityKind.CLUB && route.path().contains("{" + place + "}")) {
        Set<String> ids = named(kind, events);
        ids.add("nowhere");
        ids.forEach(id -> filled.add(Map.of("club", club, place, id)));
      }
    }
    if (filled.isEmpty()) {
      assertThat(route.path().replace("{club}", "")).doesNotContain("{");
      filled.add(Map.of("club", club));
    }
    return filled;
  }

  private static Set<String> named(EntityKind kind, List<RecordedEvent> events) {
    Set<String> ids = new TreeSet<>();
    for (RecordedEvent recorded : events) {
      TrainingEvent event = recorded.event();
      Stream.concat(References.of(event).stream(), Stream.ofNullable(Announcement.of(event)))
          .filter(entity -> entity.kind() == kind)
          .map(EntityRef::id)
          .forEach(ids::add);
      if (kind == EntityKind.EVENT) {
        ids.add(recorded.id());
      }
    }
    return ids;
  }

  /** The feed is in the order of arrival, and a fate counts arrivals; all else is told as it is. */
  private static String told(Routes.Known route, Answer answer) {
    String body = new String(answer.body(), StandardCharsets.ISO_8859_1);
    Map<String, String> headers = new TreeMap<>(answer.headers());
    if (route.path().endsWith("/events")) {
      int end = body.lastIndexOf("],\"position\"");
      String events = end < 0 ? body : body.substring(0, end);
      return EVENT_STARTS
          .splitAsStream(events)
          .map(EveryReadTest::alone)
          .sorted()
          .collect(Collectors.joining("\n", headers.toString(), ""));
    }
    if (route.path().endsWith("/events/{event}")) {
      headers.remove("ETag");
      return headers + REPEATED.matcher(body).replaceFirst("");
    }
    return headers + body;
  }

  /** An event of the feed without what follows it, which depends on its place. */
  private static String alone(String event) {
    return event.substring(0, event.lastIndexOf('}') + 1);
  }

  /** All pages of an answer, as text in which every byte shows. */
  private static String told(AskedRead read) {
    StringBuilder told = new StringBuilder();
    AskedRead next = read;
    while (next != null) {
      Answer answer = next.answer();
      assertThat(answer.status()).as("%s", read).isIn(200, 404);
      told.append(answer.status()).append(' ').append(answer.contentType()).append('\n');
      told.append(told(read.route(), answer)).append('\n');
      String link = answer.headers().get("Link");
      // The feed always leads on, to what comes next.
      next = link == null || read.route().path().endsWith("/events") ? null : next.following(link);
      assertThat(told.length()).as("%s ends somewhere", read).isLessThan(10_000_000);
    }
    return told.toString();
  }
}
