package dev.poleward.service.projection;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Moment;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Rows lie in the order in which they are read, and no club's among those of another. */
class RowKeysTest {

  private static final Comparator<byte[]> AS_ROWS_LIE = Arrays::compareUnsigned;
  private static final List<Instant> TURNS =
      Stream.of(
              "1900-01-01T00:00:00Z",
              "1969-12-31T23:59:58.999999999Z",
              "1969-12-31T23:59:59Z",
              "1969-12-31T23:59:59.000000001Z",
              "1969-12-31T23:59:59.999999999Z",
              "1970-01-01T00:00:00Z",
              "1970-01-01T00:00:00.000000001Z",
              "2038-01-19T03:14:08Z",
              "2106-02-07T06:28:16Z",
              "2199-12-31T23:59:59.999999999Z")
          .map(Instant::parse)
          .toList();

  @Test
  void instantsSortAsTheyFollowEachOtherBefore1970Too() {
    assertThat(TURNS.stream().map(time -> new RowOutput().instant(time).done()))
        .isSortedAccordingTo(AS_ROWS_LIE);
    assertThat(TURNS.stream().map(time -> new RowInput(new RowOutput().instant(time).done())))
        .extracting(RowInput::instant)
        .isEqualTo(TURNS);
  }

  @Test
  void momentsSortByTimeThenById() {
    Random random = new Random(11);
    for (int i = 0; i < 20_000; i++) {
      Moment one = moment(random);
      Moment other = moment(random);

      assertThat(
              Integer.signum(
                  AS_ROWS_LIE.compare(
                      RowKeys.repOfDog("club", "juniper", one),
                      RowKeys.repOfDog("club", "juniper", other))))
          .as("%s and %s", one, other)
          .isEqualTo(Integer.signum(one.compareTo(other)));
    }
  }

  private static Moment moment(Random random) {
    Instant time =
        random.nextBoolean()
            ? TURNS.get(random.nextInt(TURNS.size()))
            : Instant.ofEpochSecond(random.nextLong(-2_208_988_800L, 7_258_118_400L));
    return new Moment(time, id(random));
  }

  /** Short ids of few characters, so that some are equal and many begin with another. */
  private static String id(Random random) {
    String characters = "aA0z9.~-_";
    StringBuilder id = new StringBuilder();
    do {
      id.append(characters.charAt(random.nextInt(characters.length())));
    } while (random.nextInt(3) > 0);
    return id.toString();
  }

  @Test
  void idsSortAsTextDoes() {
    Random random = new Random(12);
    for (int i = 0; i < 20_000; i++) {
      String one = id(random);
      String other = id(random);

      assertThat(
              Integer.signum(
                  AS_ROWS_LIE.compare(RowKeys.event("a", one), RowKeys.event("a", other))))
          .as("%s and %s", one, other)
          .isEqualTo(Integer.signum(one.compareTo(other)));
    }
  }

  @Test
  void positionsSortAsTheyCount() {
    assertThat(
            Stream.of(1L, 2L, 127L, 128L, 255L, 256L, 65_536L, 1L << 31, 1L << 40)
                .map(position -> RowKeys.feed("a", position)))
        .isSortedAccordingTo(AS_ROWS_LIE);
  }

  /** A key is kept as text of one character for each byte. */
  private record Row(String meaning, String key) {

    static Row of(String meaning, byte[] key) {
      return new Row(meaning, new String(key, ISO_8859_1));
    }

    byte[] bytes() {
      return key.getBytes(ISO_8859_1);
    }
  }

  /** What every scan finds: the rows that it means and no others. */
  @Test
  void aScanFindsWhatItMeansAndNothingElse() {
    Random random = new Random(13);
    for (int round = 0; round < 300; round++) {
      List<Row> scans = new ArrayList<>();
      List<Row> rows = new ArrayList<>();
      for (int i = 0; i < 6; i++) {
        add(scans, rows, id(random), id(random), moment(random), random.nextInt(3));
      }
      for (Row scan : scans) {
        for (Row row : rows) {
          assertThat(RowKeys.startsWith(row.bytes(), scan.bytes()))
              .as("%s finds %s", scan, row)
              .isEqualTo(row.meaning().startsWith(scan.meaning() + "|"));
        }
      }
      assertThat(different(rows)).isTrue();
    }
  }

  private static void add(
      List<Row> scans, List<Row> rows, String club, String id, Moment moment, long number) {
    EntityKind kind = EntityKind.values()[(int) number];
    EntityRef entity = new EntityRef(kind, id);
    String time = "|" + moment;
    scans.add(Row.of("event|" + club, RowKeys.events(club).done()));
    rows.add(Row.of("event|" + club + "|" + id, RowKeys.event(club, id)));
    scans.add(Row.of("feed|" + club, RowKeys.feedOf(club).done()));
    rows.add(Row.of("feed|" + club + "|" + number, RowKeys.feed(club, number)));
    scans.add(Row.of("entity|" + club + "|" + kind, RowKeys.entities(club, kind).done()));
    rows.add(Row.of("entity|" + club + "|" + kind + "|" + id, RowKeys.entity(club, entity)));
    String about = "about|" + club + "|" + kind + "|" + id;
    scans.add(Row.of(about, RowKeys.about(club, entity).done()));
    rows.add(Row.of(about + time, RowKeys.about(club, entity, moment)));
    String ofDog = "dog|" + club + "|" + id;
    scans.add(Row.of(ofDog, RowKeys.repsOfDog(club, id).done()));
    rows.add(Row.of(ofDog + time, RowKeys.repOfDog(club, id, moment)));
    String inSession = "session|" + club + "|" + id;
    scans.add(Row.of(inSession, RowKeys.daysInSession(club, id).done()));
    rows.add(
        Row.of(
            inSession + "|" + RowKeys.day(moment.time()),
            RowKeys.dayInSession(club, id, "d" + id, moment.time())));
    scans.add(Row.of("opening|" + club, RowKeys.openings(club).done()));
    rows.add(Row.of("opening|" + club + time, RowKeys.opening(club, moment)));
    scans.add(Row.of("correction|" + club, RowKeys.corrections(club).done()));
    rows.add(Row.of("correction|" + club + "|" + number, RowKeys.correction(club, number)));
    scans.add(Row.of("unmet|" + club, RowKeys.allUnmet(club).done()));
    rows.add(Row.of("unmet|" + club + "|" + number, RowKeys.unmet(club, number)));
    String others = "other|" + club + "|" + id;
    scans.add(Row.of(others, RowKeys.contradictions(club, id).done()));
    rows.add(Row.of(others + "|" + number, RowKeys.contradiction(club, id, number)));
    rows.add(Row.of("club|" + club, RowKeys.club(club)));
    rows.add(Row.of("offset|" + number, RowKeys.offset((int) number)));
  }

  /** Reps of a day are found between where it begins and where the next one does. */
  @Test
  void aRepLiesOnItsDay() {
    for (Instant time : TURNS) {
      byte[] rep = RowKeys.repOfDog("a", "juniper", new Moment(time, "e-1"));
      int day = RowKeys.day(time);

      assertThat(Instant.EPOCH.plus(day, ChronoUnit.DAYS)).isBeforeOrEqualTo(time);
      assertThat(
              List.of(
                  RowKeys.repsOfDay("a", "juniper", day),
                  rep,
                  RowKeys.repsOfDay("a", "juniper", day + 1)))
          .isSortedAccordingTo(AS_ROWS_LIE);
    }
  }

  private static boolean different(List<Row> rows) {
    Map<String, String> meanings = new HashMap<>();
    return rows.stream()
        .allMatch(
            row -> {
              String before = meanings.put(row.key(), row.meaning());
              return before == null || before.equals(row.meaning());
            });
  }

  @Test
  void whatIsWrittenIsReadInTheSameOrder() {
    byte[] row =
        new RowOutput()
            .number(Long.MIN_VALUE)
            .whole(-7)
            .text("Füchsin 🦊")
            .text(null)
            .text("")
            .raw(new byte[] {1, 0, -1})
            .text("x".repeat(1_000))
            .number(Long.MAX_VALUE)
            .done();
    RowInput in = new RowInput(row);

    assertThat(in.number()).isEqualTo(Long.MIN_VALUE);
    assertThat(in.whole()).isEqualTo(-7);
    assertThat(in.text()).isEqualTo("Füchsin 🦊");
    assertThat(in.optionalText()).isNull();
    assertThat(in.text()).isEmpty();
    assertThat(in.raw(3)).containsExactly(1, 0, -1);
    assertThat(in.text()).hasSize(1_000);
    assertThat(in.number()).isEqualTo(Long.MAX_VALUE);
  }
}
