package dev.poleward.domain.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Proportion;
import dev.poleward.domain.programme.RewardLadder;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Reps are written as the step of the ladder and how they went: 0+++-. */
class RewardFadeTest {

  @Test
  void withoutRepsThereIsNothingToFade() {
    assertThat(fade("").reason()).isEqualTo(FadeReason.NO_REPS);
    assertThat(fade("").advice()).isEqualTo(FadeAdvice.HOLD);
    assertThat(fade("").stages()).isEmpty();
  }

  @Test
  void sevenRepsAreTooFewAndEightCleanAreEnough() {
    assertThat(fade("0+++++++").reason()).isEqualTo(FadeReason.TOO_FEW_REPS);
    assertThat(fade("0++++++++").advice()).isEqualTo(FadeAdvice.FADE);
  }

  @Test
  void betweenFloorAndAimItIsHeld() {
    assertThat(fade("0++++-++++-+++").reason()).isEqualTo(FadeReason.BELOW_AIM);
    assertThat(fade("0++++-++++-+++").advice()).isEqualTo(FadeAdvice.HOLD);
  }

  @Test
  void belowTheFloorItIsRaisedWithoutWaitingForTheEighthRep() {
    assertThat(fade("0++++++++++1---").advice()).isEqualTo(FadeAdvice.RAISE);
    assertThat(fade("1--").advice()).isEqualTo(FadeAdvice.RAISE);
    assertThat(fade("1---").reason()).isEqualTo(FadeReason.BELOW_FLOOR);
    assertThat(fade("1++-").reason()).isEqualTo(FadeReason.TOO_FEW_REPS);
    assertThat(fade("1++-++--+").reason()).isEqualTo(FadeReason.BELOW_FLOOR);
  }

  @Test
  void whatSurelyFellSinceFadingIsRaised() {
    RewardFade fade = fade("0++++++++++++++++++++1++-+-+");

    assertThat(fade.reason()).isEqualTo(FadeReason.FELL_SINCE_FADING);
    assertThat(fade.advice()).isEqualTo(FadeAdvice.RAISE);
  }

  @Test
  void afterARaiseWhatWasOnThePoorerStepDoesNotCountAgainstTheRicherOne() {
    assertThat(fade("1++++++++++0+-").reason()).isEqualTo(FadeReason.TOO_FEW_REPS);
  }

  @Test
  void atTheEndsOfTheLadderThereIsNoFurther() {
    assertThat(fade("2++++++++").reason()).isEqualTo(FadeReason.LAST_STEP);
    assertThat(fade("0--------").reason()).isEqualTo(FadeReason.FIRST_STEP);
    assertThat(fade("2++++++++").advice()).isEqualTo(FadeAdvice.HOLD);
    assertThat(fade("0--------").advice()).isEqualTo(FadeAdvice.HOLD);
  }

  @Test
  void onlyTheLastTwentyRepsOnAStepSpeakOfNow() {
    assertThat(fade("0" + "+".repeat(40) + "+++---+++---+++---++").advice())
        .isEqualTo(FadeAdvice.HOLD);
    assertThat(fade("1" + "+".repeat(40) + "+++---+++---+++---++").advice())
        .isEqualTo(FadeAdvice.RAISE);
    assertThat(fade("0" + "-".repeat(40) + "+".repeat(20)).advice()).isEqualTo(FadeAdvice.FADE);
  }

  @Test
  void everyStayOnAStepIsToldWithItsChange() {
    List<FadeStage> stages = fade("0+++-1++--0++").stages();

    assertThat(stages).extracting(FadeStage::step).containsExactly(0, 1, 0);
    assertThat(stages).extracting(FadeStage::from).containsExactly(0, 4, 8);
    assertThat(stages)
        .extracting(FadeStage::clean)
        .containsExactly(new Proportion(3, 1), new Proportion(2, 2), new Proportion(2, 0));
    assertThat(stages.get(0).change()).isNull();
    assertThat(stages.get(1).change())
        .isEqualTo(
            ShareChange.between(
                new Proportion(3, 1), new Proportion(2, 2), Confidence.OF_95_PERCENT));
  }

  @Test
  void theRepsBehindTheAdviceAreToldWithThoseTheyAreComparedWith() {
    RewardFade fade = fade("0" + "-".repeat(30) + "+".repeat(19) + "-" + "1+++-++++");

    assertThat(fade.lately()).isEqualTo(new Proportion(7, 1));
    assertThat(fade.richer()).isEqualTo(new Proportion(19, 1));
    assertThat(fade("0" + "-".repeat(30) + "+".repeat(19) + "-").lately())
        .isEqualTo(new Proportion(19, 1));
    assertThat(fade("1+++-++++0++").richer()).isNull();
    assertThat(fade("").lately()).isEqualTo(new Proportion(0, 0));
  }

  /** From 48 of 50: 8 of 10 is not surely a fall, and not surely none (Newcombe's limits). */
  @Test
  void successHeldOnlyWhereItCanBeTold() {
    String rich = "0" + "+".repeat(48) + "--";

    assertThat(fade(rich + "1" + "+".repeat(8) + "--").stages().getLast().held())
        .isEqualTo(Held.CANNOT_TELL);
    assertThat(fade(rich + "1" + "-+".repeat(10)).stages().getLast().held()).isEqualTo(Held.NO);
    assertThat(fade(rich + "1" + "+".repeat(60)).stages().getLast().held()).isEqualTo(Held.YES);
    assertThat(fade(rich).stages().getFirst().held()).isNull();
  }

  /** Seeds 0 to 1,999: a clean rep on the step never turns the advice towards more rewards. */
  @Test
  void oneMoreCleanRepNeverAsksForMoreRewards() {
    for (int seed = 0; seed < 2_000; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      StringBuilder reps = new StringBuilder();
      int step = random.nextInt(3);
      for (int stay = 0; stay <= random.nextInt(3); stay++) {
        reps.append(step);
        step = Math.max(0, Math.min(2, step + random.nextInt(3) - 1));
        double share = random.nextDouble(0.3, 1);
        for (int rep = 0; rep < 1 + random.nextInt(25); rep++) {
          reps.append(random.nextDouble() < share ? '+' : '-');
        }
      }
      RewardFade before = fade(reps.toString());
      RewardFade after = fade(reps + "+");

      assertThat(after.advice().compareTo(before.advice()))
          .as("seed %d: %s", seed, reps)
          .isLessThanOrEqualTo(0);
    }
  }

  @Test
  void theStepIsTheNearestByRewards() {
    RewardLadder usual = RewardLadder.USUAL;

    assertThat(StepOfLadder.nearest(usual, List.of(food(3), exit(RewardKind.FOOD)))).isZero();
    assertThat(StepOfLadder.nearest(usual, List.of(food(1), exit(RewardKind.TOY)))).isEqualTo(1);
    assertThat(StepOfLadder.nearest(usual, List.of(exit(RewardKind.TOY)))).isEqualTo(2);
    assertThat(StepOfLadder.nearest(usual, List.of())).isEqualTo(2);
    assertThat(StepOfLadder.nearest(usual, List.of(food(5)))).isZero();
  }

  private static Reward food(int count) {
    return new Reward(RewardKind.FOOD, RewardPlace.GAP, count, null);
  }

  private static Reward exit(RewardKind kind) {
    return new Reward(kind, RewardPlace.EXIT, null, null);
  }

  private static RewardFade fade(String reps) {
    List<RewardedRep> rewarded = new ArrayList<>();
    int step = 0;
    for (char each : reps.toCharArray()) {
      if (Character.isDigit(each)) {
        step = each - '0';
      } else {
        rewarded.add(new RewardedRep(step, each == '+'));
      }
    }
    return RewardFade.of(rewarded, 3, 0.9, 0.8);
  }
}
