package dev.poleward.domain.learner;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What passes within a session. */
class MoodTest {

  private static final Temper.Attention ATTENTION = Temper.ORDINARY.attention();

  private final Mood mood = new Mood(ATTENTION);

  private void run(int reps, boolean made) {
    for (int i = 0; i < reps; i++) {
      mood.pass(30);
      mood.ran(made);
      mood.rewarded(1);
    }
  }

  @Test
  void aFreshDogThatIsPaidOnceARepIsAsGoodAsItsSkills() {
    assertThat(mood.logit()).isZero();

    run(3, true);

    assertThat(mood.logit()).isZero();
  }

  @Test
  void attentionSagsAfterManyRepsAndRecovers() {
    run(20, true);
    double tired = mood.logit();
    assertThat(tired).isLessThan(-0.3);

    mood.pass(20 * 60);
    double rested = mood.logit();
    assertThat(rested).isGreaterThan(tired);

    mood.pass(24 * 3_600);
    assertThat(mood.logit()).isZero();
  }

  @Test
  void oneMissIsForgottenAndMissesRunningAreNot() {
    run(1, false);
    assertThat(mood.logit()).isZero();

    run(2, false);
    assertThat(mood.logit()).isLessThan(-ATTENTION.missHurts());

    run(1, true);
    assertThat(mood.logit()).isZero();
  }

  @Test
  void rewardsPullModestly() {
    Mood unpaid = new Mood(ATTENTION);
    Mood wellPaid = new Mood(ATTENTION);
    for (int i = 0; i < 6; i++) {
      unpaid.ran(true);
      wellPaid.ran(true);
      wellPaid.rewarded(4);
    }

    assertThat(unpaid.logit()).isNegative();
    assertThat(wellPaid.logit()).isPositive();
    assertThat(wellPaid.logit() - unpaid.logit()).isLessThan(ATTENTION.rewardPull());
  }
}
