package dev.poleward.domain.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.mastery.Proportion;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

class CleanMonthTest {

  private static final Drill DRILL = DefaultProgramme.programme().drills().getFirst().drill();

  private static PlacedRep rep(boolean clean, String time) {
    return Ran.of(DRILL, clean, Instant.parse(time));
  }

  /** In Lisbon the last hour of March in UTC is the first of April. */
  @Test
  void repsAreOfTheMonthOfTheClubsDay() {
    List<PlacedRep> reps =
        List.of(
            rep(true, "2026-01-31T18:00:00Z"),
            rep(false, "2026-03-31T22:59:59Z"),
            rep(true, "2026-03-31T23:00:00Z"),
            rep(true, "2026-04-30T18:00:00Z"),
            rep(false, "2026-04-30T19:00:00Z"));

    assertThat(CleanMonth.of(reps, ZoneId.of("Europe/Lisbon")))
        .containsExactly(
            new CleanMonth(YearMonth.of(2026, 1), new Proportion(1, 0)),
            new CleanMonth(YearMonth.of(2026, 3), new Proportion(0, 1)),
            new CleanMonth(YearMonth.of(2026, 4), new Proportion(2, 1)));
  }

  @Test
  void noRepsAreNoMonths() {
    assertThat(CleanMonth.of(List.of(), ZoneId.of("Europe/Lisbon"))).isEmpty();
  }
}
