package dev.poleward.domain.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.domain.event.AimEvent.TrialRun;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.judgement.ClubRetention;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.record.DaySpan;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.PlacedRep;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class SeasonTest {

  private static final DaySpan YEAR = span("2026-01-01", "2026-12-31");

  private static DaySpan span(String from, String to) {
    return new DaySpan(LocalDate.parse(from), LocalDate.parse(to), ZoneOffset.UTC);
  }

  private static Season season(Schooling schooling, DaySpan span) {
    return Season.of(
        schooling.reps(),
        List.of(),
        Walkable.standing(schooling, null).standing(span.end(), ClubRetention.UNKNOWN),
        span);
  }

  @Test
  void countsWhatWasRun() {
    Schooling schooling = Walkable.after(14, Temper.ORDINARY, 1);
    Season season = season(schooling, YEAR);

    assertThat(season.total().sessions()).isEqualTo(14);
    assertThat(season.total().days()).isEqualTo(14);
    assertThat(season.total().reps()).isEqualTo(schooling.reps().size());
    assertThat((long) season.total().clean()).isEqualTo(Walkable.clean(schooling.reps()));
    assertThat(season.total().gaps())
        .isEqualTo(
            schooling.reps().stream()
                .mapToInt(rep -> Objects.requireNonNull(rep.setup()).poles() - 1)
                .sum());
    assertThat(Objects.requireNonNull(season.longestBreak()).days()).isBetween(2, 3);
  }

  @Test
  void monthsAddUpToTheWhole() {
    Season season = season(Walkable.after(20, Temper.ORDINARY, 1), YEAR);

    assertThat(season.months())
        .extracting(Season.Month::month)
        .containsExactly(
            YearMonth.parse("2026-01"), YearMonth.parse("2026-02"), YearMonth.parse("2026-03"));
    assertThat(season.months().stream().mapToInt(month -> month.amount().reps()).sum())
        .isEqualTo(season.total().reps());
    assertThat(season.months().stream().mapToInt(month -> month.amount().gaps()).sum())
        .isEqualTo(season.total().gaps());
  }

  /** Whatever day the season is cut at, nothing is lost and nothing is told twice. */
  @Test
  void twoPartsOfAYearMakeTheYear() {
    Schooling schooling = Walkable.after(30, Temper.QUICK, 1);
    Season whole = season(schooling, YEAR);
    for (int day = 5; day < 120; day += 9) {
      LocalDate cut = YEAR.from().plusDays(day);
      Season before = season(schooling, new DaySpan(YEAR.from(), cut, ZoneOffset.UTC));
      Season after = season(schooling, new DaySpan(cut.plusDays(1), YEAR.to(), ZoneOffset.UTC));

      assertThat(before.total().reps() + after.total().reps()).isEqualTo(whole.total().reps());
      List<Season.RungDone> moved = new ArrayList<>(before.movedOn());
      moved.addAll(after.movedOn());
      assertThat(moved).isEqualTo(whole.movedOn());
      List<Season.StageDone> stages = new ArrayList<>(before.stages());
      stages.addAll(after.stages());
      assertThat(stages).isEqualTo(whole.stages());
      assertThat(before.sides().getFirst().after()).isEqualTo(after.sides().getFirst().before());
    }
    assertThat(whole.stages()).isNotEmpty();
  }

  @Test
  void trialsAreCountedApart() {
    List<Fact<TrialRun>> trials = new ArrayList<>();
    for (Outcome outcome : List.of(Outcome.CLEAN, Outcome.POPPED_OUT, Outcome.VOID)) {
      trials.add(
          new Fact<>(
              new Moment(Walkable.BEGIN, "t-" + outcome),
              Walkable.BEGIN,
              new TrialRun("juniper", 12, outcome, null, null, null),
              null));
    }
    List<PlacedRep> none = List.of();
    DogStanding nowhere =
        StandingReading.begun(Walkable.PROGRAMME, null)
            .standing(Walkable.BEGIN, ClubRetention.UNKNOWN);
    Season season = Season.of(none, trials, nowhere, YEAR);

    assertThat(season.total().trials()).isEqualTo(2);
    assertThat(season.total().cleanTrials()).isEqualTo(1);
    assertThat(season.total().reps()).isZero();
    assertThat(season.months()).hasSize(1);
    assertThat(season.longestBreak()).isNull();
  }

  @Test
  void aSeasonHasAnEnd() {
    assertThatThrownBy(() -> span("2026-02-02", "2026-02-01"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> span("2025-01-01", "2026-12-31"))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
