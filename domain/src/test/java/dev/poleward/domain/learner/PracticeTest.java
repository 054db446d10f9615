package dev.poleward.domain.learner;

import static dev.poleward.domain.learner.Evenings.BEGIN;
import static dev.poleward.domain.learner.Evenings.at;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What a rep teaches, and where. */
class PracticeTest {

  private static final double[] SIZES = {0, 7.5, 15, 22.5, 30, 45, 60, 90, 120, 165};

  private final SimulatedDog before = new SimulatedDog(Temper.ORDINARY);
  private final SplittableRandom luck = new SplittableRandom(3);

  private SimulatedDog after(int reps, Task task) {
    SimulatedDog dog = before.copy();
    for (int i = 0; i < reps; i++) {
      // At one instant, so that nothing fades between.
      dog.attempt(task, BEGIN, luck);
    }
    return dog;
  }

  /** Logits gained at an angle. */
  private double gain(SimulatedDog dog, double degrees) {
    return Logit.of(dog.chanceOfEntry(at(degrees)))
        - Logit.of(before.chanceOfEntry(at(degrees)))
        - (Logit.of(dog.chanceOfEntry(handledOnly()))
            - Logit.of(before.chanceOfEntry(handledOnly())));
  }

  /** So far away on the other side that nothing but what the handler does is shared. */
  private static Task handledOnly() {
    return at(-170);
  }

  @Test
  void whatIsLearnedAtOneAngleHelpsAtOthersTheLessTheFartherTheyLie() {
    SimulatedDog dog = after(10, at(45));

    double[] gains = IntStream.rangeClosed(0, 8).mapToDouble(i -> gain(dog, 45 + 15 * i)).toArray();
    assertThat(gains[0]).isGreaterThan(0.1);
    for (int i = 1; i < gains.length; i++) {
      assertThat(gains[i]).as("%d degrees away", 15 * i).isLessThanOrEqualTo(gains[i - 1]);
    }
    assertThat(gain(dog, 30)).isBetween(0.0, gains[0]);
    assertThat(gain(dog, 15)).isBetween(0.0, gain(dog, 30));
    assertThat(gains[1] / gains[0]).isBetween(0.6, 0.95);
    assertThat(gains[8]).isLessThan(0.001);
  }

  @Test
  void hardlyAnyOfItArrivesOnTheOtherEntrySide() {
    SimulatedDog dog = after(10, at(15));

    assertThat(gain(dog, -15)).isLessThan(0.05 * gain(dog, 15)).isGreaterThanOrEqualTo(0);
  }

  @Test
  void straightOnHelpsBothEntrySides() {
    SimulatedDog dog = after(10, at(0));

    assertThat(gain(dog, 15)).isGreaterThan(0.05);
    assertThat(gain(dog, -15)).isEqualTo(gain(dog, 15));
  }

  @Test
  void noRepEverLowersASkillWhateverComesOfIt() {
    for (int seed = 0; seed < 40; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      SimulatedDog dog = new SimulatedDog(Population.CLUB.draw(random));
      for (int rep = 0; rep < 60; rep++) {
        SimulatedDog earlier = dog.copy();
        dog.attempt(anyTask(random), BEGIN, random);
        for (double size : SIZES) {
          for (int sign : new int[] {1, -1}) {
            Task seen = anyTask(random).from(new EntryAngle(sign * size));
            assertThat(dog.chanceOfEntry(seen))
                .as("seed %d", seed)
                .isGreaterThanOrEqualTo(earlier.chanceOfEntry(seen));
            assertThat(dog.chanceOfClean(seen))
                .as("seed %d", seed)
                .isGreaterThanOrEqualTo(earlier.chanceOfClean(seen));
          }
        }
      }
    }
  }

  private static Task anyTask(SplittableRandom random) {
    Manoeuvre[] manoeuvres = Manoeuvre.values();
    LeadIn[] leadIns = LeadIn.values();
    return Task.plain(new EntryAngle(random.nextDouble(-179, 179)), random.nextInt(2, 13))
        .behind(leadIns[random.nextInt(leadIns.length)])
        .handled(
            manoeuvres[random.nextInt(manoeuvres.length)],
            random.nextBoolean() ? DogSide.LEFT : DogSide.RIGHT)
        .helped(random.nextInt(4) == 0 ? Help.GUIDE : Help.NONE);
  }

  @Test
  void moreRepsTeachMoreAndEachOfThemLess() {
    SimulatedDog dog = before.copy();
    double[] chances = new double[5];
    for (int i = 0; i < chances.length; i++) {
      chances[i] = dog.chanceOfEntry(at(0));
      for (int rep = 0; rep < 20; rep++) {
        // Far enough apart that it is always fresh, too near for anything to fade.
        dog.attempt(at(0), BEGIN.plusSeconds(900L * (20 * i + rep)), luck);
      }
    }

    assertThat(chances).isSorted();
    assertThat(chances[2] - chances[1]).isLessThan(chances[1] - chances[0]);
    assertThat(chances[3] - chances[2]).isLessThan(chances[2] - chances[1]);
    assertThat(chances[4]).isLessThan(Logit.chance(Temper.ORDINARY.entry().ceiling()));
  }

  @Test
  void aMissTeachesLessThanASuccessAndAHelpedRepLessThanOneWithout() {
    Task task = at(0);
    // Six numbers a rep: luck at either end decides the entry.
    SimulatedDog made = before.copy();
    made.attempt(task, BEGIN, always(0.01));
    SimulatedDog missed = before.copy();
    missed.attempt(task, BEGIN, always(0.99));
    SimulatedDog helped = before.copy();
    helped.attempt(task.helped(Help.GUIDE), BEGIN, always(0.01));

    assertThat(gain(missed, 0)).isBetween(0.001, 0.5 * gain(made, 0));
    assertThat(gain(helped, 0)).isBetween(0.001, 0.8 * gain(made, 0));
  }

  private static RandomGenerator always(double drawn) {
    return new RandomGenerator() {
      @Override
      public long nextLong() {
        return 0;
      }

      @Override
      public double nextDouble() {
        return drawn;
      }

      @Override
      public double nextGaussian() {
        return 0;
      }
    };
  }

  @Test
  void aRepTeachesMostNearTheFrontier() {
    Temper.Practice practice = Temper.ORDINARY.practice();

    assertThat(practice.atChance(2.0 / 3)).isEqualTo(1, within(1e-12));
    assertThat(practice.atChance(0.99)).isLessThan(0.2);
    assertThat(practice.atChance(0.05)).isLessThan(0.2);
    assertThat(practice.atChance(0.8)).isGreaterThan(0.8);
  }

  @Test
  void whatTheHandlerDoesIsLearnedAndHelpsOtherHandlings() {
    Task strange = at(0).handled(Manoeuvre.REAR_CROSS, DogSide.RIGHT);
    SimulatedDog dog = after(60, strange);

    Task otherSide = at(170).handled(Manoeuvre.REAR_CROSS, DogSide.LEFT);
    Task other = at(170).handled(Manoeuvre.SEND, null);
    Task same = at(170).handled(Manoeuvre.REAR_CROSS, DogSide.RIGHT);
    double gainOfSame = Logit.of(dog.chanceOfEntry(same)) - Logit.of(before.chanceOfEntry(same));
    double gainOfOtherSide =
        Logit.of(dog.chanceOfEntry(otherSide)) - Logit.of(before.chanceOfEntry(otherSide));
    double gainOfOther = Logit.of(dog.chanceOfEntry(other)) - Logit.of(before.chanceOfEntry(other));

    assertThat(gainOfSame).isGreaterThan(gainOfOtherSide);
    assertThat(gainOfOtherSide).isGreaterThan(gainOfOther);
    assertThat(gainOfOther).isGreaterThan(0.02);
  }
}
