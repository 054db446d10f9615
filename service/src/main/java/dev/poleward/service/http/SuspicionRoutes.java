package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.SuspectedDuplicate;
import dev.poleward.domain.record.SuspectedDuplicates;
import dev.poleward.domain.record.View;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.http.ClubReads.Reader;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reps that two phones may have logged. Safe for use by many threads. */
final class SuspicionRoutes {

  /** Most sessions that one request looks at. */
  static final int SESSIONS_MAX = 2_000;

  /** Reps after which one request begins no further session. */
  static final int REPS_MAX = 50_000;

  private static final int SESSIONS_AT_A_TIME = 100;
  private static final int WITHIN_SECONDS_MAX = 120;

  /** A dog needs longer to run, to be rewarded and to come back. [C] */
  private static final int WITHIN_SECONDS_DEFAULT = 10;

  private static final Set<String> KNOWN = Set.of("asOf", "knownAt", "within", "limit", "cursor");

  private record Suspects(View view, Duration within, int limit, @Nullable SuspicionCursor after) {}

  private final ClubReads reads;

  SuspicionRoutes(ClubReads reads) {
    this.reads = reads;
  }

  /** {@code GET …/suspected-duplicates}. */
  Answer suspectedDuplicates(Call call) {
    return reads.read(call, this::suspectedDuplicates);
  }

  private Answer suspectedDuplicates(Call call, Reader reader) {
    Parameters parameters = new Parameters(call, KNOWN);
    Suspects asked =
        new Suspects(
            parameters.view(),
            Duration.ofSeconds(
                parameters.whole("within", 1, WITHIN_SECONDS_MAX, WITHIN_SECONDS_DEFAULT)),
            parameters.limit(),
            SuspicionCursor.read(parameters));
    return parameters
        .problem()
        .map(call::refused)
        .orElseGet(() -> new Scan(reader, asked).answer(call));
  }

  /** One walk through the sessions, for one page. */
  private static final class Scan {

    private final Reader reader;
    private final Suspects asked;
    private final Placement placement;
    private final Registry registry;
    private final List<SuspectedDuplicate> page = new ArrayList<>();
    private @Nullable SuspicionCursor last;
    private int sessions;
    private int reps;

    Scan(Reader reader, Suspects asked) {
      this.reader = reader;
      this.asked = asked;
      this.placement = new Placement(reader.reading().facts(), asked.view());
      this.registry = new Registry(placement, asked.view());
      this.last = asked.after();
    }

    Answer answer(Call call) {
      boolean more = walk();
      ObjectNode body = JsonNodeFactory.instance.objectNode();
      ArrayNode items = body.putArray("suspectedDuplicates");
      page.forEach(each -> items.add(shape(each)));
      String next = more && last != null ? last.written() : null;
      return new Page<>(List.of(), next).linked(call, Answer.json(200, body));
    }

    /** Whether there may be more after {@link #last}. */
    private boolean walk() {
      Moment opened = null;
      if (last != null) {
        opened = last.opened();
        Moment later = last.later();
        if (later != null && fills(begun(opened), opened, later)) {
          return true;
        }
      }
      while (true) {
        List<Fact<SessionOpened>> openings =
            reader.reading().facts().sessionsOpened(opened, SESSIONS_AT_A_TIME);
        for (Fact<SessionOpened> opening : openings) {
          if (sessions == SESSIONS_MAX || reps >= REPS_MAX) {
            return true;
          }
          opened = opening.moment();
          if (fills(Optional.of(opening), opened, null)) {
            return true;
          }
        }
        if (openings.size() < SESSIONS_AT_A_TIME) {
          return false;
        }
      }
    }

    /** The opening at that moment, when there is one. */
    private Optional<Fact<SessionOpened>> begun(Moment opened) {
      return reader
          .reading()
          .facts()
          .event(opened.id())
          .flatMap(fact -> Optional.ofNullable(fact.as(SessionOpened.class)))
          .filter(fact -> fact.moment().equals(opened));
    }

    /** Takes the suspicions of a session; says whether there are more of them than room. */
    private boolean fills(
        Optional<Fact<SessionOpened>> opening, Moment opened, @Nullable Moment after) {
      sessions++;
      for (SuspectedDuplicate each : opening.map(this::suspicions).orElse(List.of())) {
        Moment later = each.second().moment();
        if (after == null || later.compareTo(after) > 0) {
          if (page.size() == asked.limit()) {
            return true;
          }
          page.add(each);
          last = new SuspicionCursor(opened, later);
        }
      }
      if (page.size() < asked.limit()) {
        last = new SuspicionCursor(opened, null);
      }
      return false;
    }

    private List<SuspectedDuplicate> suspicions(Fact<SessionOpened> opening) {
      if (registry.sessionOpenedBy(opening).isEmpty()) {
        return List.of();
      }
      List<PlacedRep> placed = placement.inSession(opening.event().session());
      reps += placed.size();
      return SuspectedDuplicates.among(placed, asked.within()).stream()
          .filter(each -> reader.maySee(placement.identity(), each.second().dog()))
          .toList();
    }
  }

  private static ObjectNode shape(SuspectedDuplicate suspected) {
    PlacedRep second = suspected.second();
    return new Writing()
        .put("session", second.session())
        .put("dog", second.dog())
        .put("seconds", (Double) (suspected.apart().toNanos() / 1e9))
        .put("first", rep(suspected.first()))
        .put("second", rep(second))
        .putTexts("differs", suspected.differs().stream().map(SuspicionRoutes::memberName).toList())
        .put("withdraw", second.moment().id())
        .done();
  }

  private static ObjectNode rep(PlacedRep rep) {
    return new Writing()
        .put("rep", rep.rep())
        .put("event", rep.moment().id())
        .putPrinted("time", rep.moment().time())
        .put("outcome", rep.outcome())
        .put("observer", rep.details().observer())
        .done();
  }

  /** As the member of a rep is called: {@code DOG_SIDE} is {@code dogSide}. */
  private static String memberName(Enum<?> aspect) {
    StringBuilder name = new StringBuilder();
    for (String word : Writing.wireName(aspect).split("-", -1)) {
      name.append(
          name.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
    }
    return name.toString();
  }
}
