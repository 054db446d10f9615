package dev.poleward.domain.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CountingRulesTest {

  /** Eight of ten: 38% of dogs at 0.7 pass, 93% of those at 0.9 [D]; the sum by hand [D]. */
  @Test
  void eightOfTenMovesOnManyADogThatIsNotThereYet() {
    KOfN rule = new KOfN(8, 10);

    assertThat(CountingChances.atFirst(rule, 0.7)).isCloseTo(0.3827827864, within(1e-10));
    assertThat(CountingChances.atFirst(rule, 0.9)).isCloseTo(0.9298091736, within(1e-10));
    assertThat(CountingChances.atFirst(new KOfN(2, 3), 0.5)).isCloseTo(0.5, within(1e-15));
  }

  /** All 1,024 ways that ten reps can go, each through the rule [D]. */
  @Test
  void theChanceIsThatOfTheRuleItself() {
    KOfN rule = new KOfN(8, 10);
    double chance = 0;
    for (int way = 0; way < 1 << 10; way++) {
      Evidence evidence = rule.begun();
      for (int rep = 0; rep < 10 && evidence.decision() != Decision.MOVE_ON; rep++) {
        evidence = evidence.with(((way >> rep) & 1) == 1);
      }
      if (evidence.decision() == Decision.MOVE_ON) {
        int clean = Integer.bitCount(way);
        chance += Math.pow(0.7, clean) * Math.pow(0.3, 10 - clean);
      }
    }

    assertThat(CountingChances.atFirst(rule, 0.7)).isCloseTo(chance, within(1e-12));
  }

  @Test
  void eightCleanAreEnoughBeforeTheTenth() {
    assertThat(after(new KOfN(8, 10), "++++++++").decision()).isEqualTo(Decision.MOVE_ON);
  }

  @Test
  void whatWasPassedIsPassedOnlyWhileTheLastRepsSaySo() {
    KOfN rule = new KOfN(8, 10);

    assertThat(after(rule, "++++++++--").decision()).isEqualTo(Decision.MOVE_ON);
    assertThat(after(rule, "++++++++---").decision()).isEqualTo(Decision.HOLD);
    assertThat(after(rule, "++++++++---").clean()).isEqualTo(7);
  }

  @Test
  void threeMissesOfTenHoldUntilOneIsTooOldToCount() {
    KOfN rule = new KOfN(8, 10);

    assertThat(after(rule, "--").decision()).isEqualTo(Decision.UNDECIDED);
    assertThat(after(rule, "---").decision()).isEqualTo(Decision.HOLD);
    assertThat(after(rule, "---+++++++").decision()).isEqualTo(Decision.HOLD);
    assertThat(after(rule, "---+++++++").cleanRepsToDecide()).isEqualTo(1);
    assertThat(after(rule, "---++++++++").decision()).isEqualTo(Decision.MOVE_ON);
    assertThat(rule.begun().cleanRepsToDecide()).isEqualTo(8);
    assertThat(after(rule, "+++-").cleanRepsToDecide()).isEqualTo(5);
  }

  @Test
  void aMissBeginsTheRunAnew() {
    RunOfClean rule = new RunOfClean(3);

    assertThat(rule.begun().decision()).isEqualTo(Decision.UNDECIDED);
    assertThat(after(rule, "++-").decision()).isEqualTo(Decision.HOLD);
    assertThat(after(rule, "++-").cleanRepsToDecide()).isEqualTo(3);
    assertThat(after(rule, "++-+").decision()).isEqualTo(Decision.UNDECIDED);
    assertThat(after(rule, "++-+").cleanRepsToDecide()).isEqualTo(2);
    assertThat(after(rule, "++-+++").decision()).isEqualTo(Decision.MOVE_ON);
    assertThat(after(rule, "++-++++").decision()).isEqualTo(Decision.MOVE_ON);
    assertThat(after(rule, "++-++++").cleanRepsToDecide()).isZero();
    assertThat(after(rule, "++-++++-").decision()).isEqualTo(Decision.HOLD);
  }

  /**
   * A fair coin shows three heads in a row within ten throws in 520 of 1,024 ways, and takes 14
   * throws on average; six take 126 (Feller 1968, XIII.7) [D].
   */
  @Test
  void runsOfAFairCoin() {
    assertThat(CountingChances.within(new RunOfClean(3), 10, 0.5))
        .isCloseTo(520 / 1024.0, within(1e-15));
    assertThat(CountingChances.repsExpected(new RunOfClean(3), 0.5)).isCloseTo(14, within(1e-12));
    assertThat(CountingChances.repsExpected(new RunOfClean(6), 0.5)).isCloseTo(126, within(1e-12));
  }

  /** Every way that ten reps can go, each through the rule [D]. */
  @ParameterizedTest
  @CsvSource({"1, .3", "2, .7", "4, .9", "10, .7", "6, .5"})
  void theChanceOfARunIsThatOfTheRuleItself(int length, double share) {
    double chance = 0;
    for (int way = 0; way < 1 << 10; way++) {
      Evidence evidence = new RunOfClean(length).begun();
      for (int rep = 0; rep < 10 && evidence.decision() != Decision.MOVE_ON; rep++) {
        evidence = evidence.with(((way >> rep) & 1) == 1);
      }
      if (evidence.decision() == Decision.MOVE_ON) {
        int clean = Integer.bitCount(way);
        chance += Math.pow(share, clean) * Math.pow(1 - share, 10 - clean);
      }
    }

    assertThat(CountingChances.within(new RunOfClean(length), 10, share))
        .isCloseTo(chance, within(1e-12));
  }

  @Test
  void runsAtTheEndsOfWhatIsPossible() {
    assertThat(CountingChances.within(new RunOfClean(6), 5, 1)).isZero();
    assertThat(CountingChances.within(new RunOfClean(6), 6, 1)).isEqualTo(1);
    assertThat(CountingChances.within(new RunOfClean(6), 600, 0)).isZero();
    assertThat(CountingChances.repsExpected(new RunOfClean(6), 1)).isEqualTo(6);
  }

  @Test
  void whatIsNoRuleIsRefused() {
    assertThatThrownBy(() -> new KOfN(11, 10)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new KOfN(0, 10)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new RunOfClean(0)).isInstanceOf(IllegalArgumentException.class);
  }

  private static Evidence after(MovingOnTest test, String reps) {
    Evidence evidence = test.begun();
    for (char rep : reps.toCharArray()) {
      evidence = evidence.with(rep == '+');
    }
    return evidence;
  }
}
