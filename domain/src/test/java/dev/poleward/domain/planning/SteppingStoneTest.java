package dev.poleward.domain.planning;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.Rung;
import dev.poleward.domain.programme.Stage;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Over simulated dogs: what no stone may do, whatever is expected. */
class SteppingStoneTest {

  private static final int DOGS = 4;
  private static final int SESSIONS = 40;
  private static final Programme PROGRAMME = DefaultProgramme.programme();

  private interface Look {
    void at(CleanForecast forecast, Drill wanted, Drill stone, double share);
  }

  /** Every drill of the programme as it lies in front of dogs while they learn. */
  private static void everyStone(Look look) {
    for (long seed = 1; seed <= DOGS; seed++) {
      SimulatedPupil pupil = new SimulatedPupil(seed);
      for (int session = 0; session < SESSIONS; session++) {
        CleanForecast forecast = pupil.forecast();
        SteppingStone stones = new SteppingStone(PROGRAMME, forecast);
        for (Stage stage : PROGRAMME.stages()) {
          for (Drill drill : stage.drills()) {
            for (double share : new double[] {0, 0.62, 0.8, 0.9}) {
              look.at(forecast, drill, stones.towards(List.of(drill), share).getFirst(), share);
            }
          }
        }
        pupil.run(pupil.plan(Limits.ofReps(16)));
      }
    }
  }

  @Test
  void noneLiesBeyondReachAndNoneIsLikelierMissedThanAskedFor() {
    everyStone(
        (forecast, wanted, stone, share) -> {
          assertThat(stone.rung().size())
              .isLessThanOrEqualTo(Math.min(wanted.rung().size(), forecast.reach(wanted)) + 1e-6);
          assertThat(stone.rung().size() == 0 || forecast.share(stone) >= share).isTrue();
        });
  }

  /** The default tolerance is 5 degrees: what counts for a rung lies at most 2.5 short of it. */
  @Test
  void noneCountsForARungThatItDoesNotShow() {
    everyStone(
        (_, _, stone, _) -> {
          for (Stage stage : PROGRAMME.stages()) {
            if (stage.ground().line().poles() == stone.poles()
                && stage.runUps().stream()
                    .anyMatch(each -> each.asRun().equals(stone.runUp().asRun()))) {
              double rung = stage.rungOf(stone.rung().angle()).map(Rung::size).orElse(0.0);
              assertThat(rung - stone.rung().size()).isLessThanOrEqualTo(2.5 + 1e-6);
            }
          }
        });
  }
}
