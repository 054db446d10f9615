package dev.poleward.domain.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.layout.EntrySide;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What times say. */
class PaceTest {

  private static final Instant START = Instant.parse("2026-05-04T17:00:00Z");
  private static final Instant END = START.plus(Duration.ofDays(60));

  private static Pace pace(List<TimedRep> reps) {
    return Pace.of(reps, START, END, ZoneOffset.UTC);
  }

  private static Instant at(int day, int minute) {
    return START.plus(Duration.ofDays(day)).plus(Duration.ofMinutes(minute));
  }

  @Test
  void polesAndSidesAreNeverPooled() {
    List<TimedRep> reps =
        List.of(
            new TimedRuns(6, 0, Manoeuvre.ALONGSIDE).clean(at(0, 0), 2.5),
            new TimedRuns(4, -45, Manoeuvre.SEND).clean(at(0, 1), 1.7),
            new TimedRuns(4, 45, Manoeuvre.SEND).clean(at(0, 2), 1.5),
            new TimedRuns(4, 90, Manoeuvre.RECALL).clean(at(0, 3), 1.9));

    assertThat(pace(reps).kinds())
        .extracting(PaceOfKind::kind)
        .containsExactly(
            new RunKind(4, EntrySide.POLE),
            new RunKind(4, EntrySide.GAP),
            new RunKind(6, EntrySide.BOTH));
    assertThat(pace(reps).kinds().getFirst().seconds().median()).isCloseTo(1.7, within(1e-12));
  }

  /** Twelve poles in 2.0 seconds are 5.5 gaps a second: what is faster is an error [C]. */
  @Test
  void whatIsFasterThanADogCanBeIsSetAside() {
    TimedRuns twelve = new TimedRuns(12, 0, Manoeuvre.ALONGSIDE);
    Pace pace =
        pace(
            List.of(
                twelve.clean(at(0, 0), 2.0),
                twelve.clean(at(0, 1), 1.999),
                twelve.clean(at(0, 2), 0)));

    assertThat(pace.implausible()).isEqualTo(2);
    assertThat(pace.kinds().getFirst().seconds().of()).isEqualTo(1);
  }

  @Test
  void onlyCleanRunsWithoutHelpSayHowFastADogIs() {
    Pace pace =
        pace(
            List.of(
                TimedRuns.OF_FOUR.ran(at(0, 0), 1.5, Outcome.CLEAN, Help.LURE, null),
                TimedRuns.OF_FOUR.ran(at(0, 1), 1.5, Outcome.POPPED_OUT, Help.NONE, null),
                TimedRuns.OF_FOUR.ran(at(0, 2), 1.5, Outcome.VOID, Help.NONE, null)));

    assertThat(pace.notClean()).isEqualTo(3);
    assertThat(pace.kinds()).isEmpty();
  }

  /** Medians of the days 2.0, 1.8, 1.9 at weeks 0, 1 and 3: slopes -0.2, -0.0333 and 0.05 [D]. */
  @Test
  void theTrendIsThatOfTheDays() {
    List<TimedRep> reps = new ArrayList<>();
    for (double more : new double[] {-0.1, 0, 0.1}) {
      reps.add(TimedRuns.OF_FOUR.clean(at(0, (int) (10 * more) + 5), 2.0 + more));
      reps.add(TimedRuns.OF_FOUR.clean(at(7, (int) (10 * more) + 5), 1.8 + more));
      reps.add(TimedRuns.OF_FOUR.clean(at(21, (int) (10 * more) + 5), 1.9 + more));
    }
    PaceOfKind kind = pace(reps).kinds().getFirst();

    assertThat(kind.days()).hasSize(3);
    // What is left of the days without the slope is 2.0, 1.8333 and 2.0: 2.0 at the beginning [D].
    assertThat(kind.trendOn(kind.days().getFirst().day())).isCloseTo(2.0, within(1e-9));
    assertThat(kind.trendOn(kind.days().getLast().day())).isCloseTo(1.9, within(1e-9));
    assertThat(kind.trend()).isNotNull();
    assertThat(kind.trend().slope()).isCloseTo(-0.1 / 3, within(1e-9));
    assertThat(kind.trend().lower()).isNull();
  }

  /** Gap times .3 .3 .6 .3: the third is twice the median; half of all distances are none [D]. */
  @Test
  void theGapThatIsSlowIsFound() {
    TimedRuns five = new TimedRuns(5, 0, Manoeuvre.ALONGSIDE);
    List<TimedRep> reps = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      reps.add(five.withGaps(at(0, i), .3, .3, .6, .3));
    }
    Rhythm rhythm = pace(reps).kinds().getFirst().rhythm();

    assertThat(rhythm).isNotNull();
    assertThat(rhythm.spread().of()).isEqualTo(12);
    assertThat(rhythm.spread().median()).isZero();
    assertThat(rhythm.gaps())
        .extracting(Rhythm.Gap::slow)
        .containsExactly(false, false, true, false);
    assertThat(rhythm.gaps().get(2).share().median()).isCloseTo(2, within(1e-12));
    assertThat(rhythm.gaps().get(2).seconds().median()).isCloseTo(.6, within(1e-12));
    assertThat(rhythm.gaps().get(2).seconds().mad()).isZero();
  }

  /** .2 .3 .4: shares 2/3, 1, 4/3; the middle distance is 1/3, times 1.4826 [D]. */
  @Test
  void theSpreadOfARun() {
    Rhythm rhythm =
        pace(List.of(TimedRuns.OF_FOUR.withGaps(at(0, 0), .2, .3, .4))).kinds().getFirst().rhythm();

    assertThat(rhythm).isNotNull();
    assertThat(rhythm.spread().median()).isCloseTo(1.4826 / 3, within(1e-9));
    assertThat(rhythm.spread().limits()).isNull();
  }

  @Test
  void gapsOfAnotherNumberOfPolesAreNoRhythm() {
    List<TimedRep> reps =
        List.of(
            TimedRuns.OF_FOUR.withGaps(at(0, 0), .4, .4),
            TimedRuns.OF_FOUR.withGaps(at(0, 1), .4, .4, .4, .4),
            TimedRuns.OF_FOUR.withGaps(at(0, 2), .8, .8, .0));

    assertThat(pace(reps).kinds().getFirst().rhythm()).isNull();
    assertThat(pace(reps).kinds().getFirst().seconds().of()).isEqualTo(3);
  }
}
