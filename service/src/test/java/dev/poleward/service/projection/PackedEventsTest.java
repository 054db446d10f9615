package dev.poleward.service.projection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.CrossAt;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.JumpTurn;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardDelivery;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import dev.poleward.domain.event.SessionEvent.SetupChanged;
import dev.poleward.domain.event.Stride;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.ClockPosition;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import dev.poleward.service.codec.CanonicalJson;
import dev.poleward.service.codec.EventCodec;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PackedEventsTest {

  private static final int EVENTS = 2_000;

  private final PackedEvents packed = new PackedEvents(HistoryEntries.CODEC);

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void comesBackAsItWas(long seed) {
    RandomGenerator random = new SplittableRandom(seed);
    for (int i = 0; i < EVENTS; i++) {
      TrainingEvent event =
          switch (i % 3) {
            case 0 -> rep(random);
            case 1 -> new SetupChanged("s-é", setup(random), null);
            default -> timing(random);
          };

      assertThat(packed.read(new RowInput(written(event)))).as("seed " + seed).isEqualTo(event);
    }
  }

  @Test
  void refusesWhatIsCutShort() {
    byte[] whole = written(new SetupChanged("s-1", setup(new SplittableRandom(4)), "b"));

    for (int length = 0; length < whole.length; length++) {
      byte[] cut = Arrays.copyOf(whole, length);
      assertThatThrownBy(() -> packed.read(new RowInput(cut))).isInstanceOf(RuntimeException.class);
    }
  }

  @Test
  void refusesFormsThatItDoesNotKnow() {
    assertThatThrownBy(() -> packed.read(new RowInput(new byte[] {7})))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("form 7");
  }

  /**
   * Rows say words by their place. Whoever breaks this test by more than an addition at the end of
   * a line has to begin the next generation of rows.
   */
  @Test
  void wordsKeepTheirPlaces() {
    assertThat(Words.ALL.stream().map(Object::toString))
        .containsExactly(
            "[ALONGSIDE, REAR_CROSS, FRONT_CROSS, BLIND_CROSS, LATERAL_DISTANCE, RECALL, SEND, PRESSURE]",
            "[CLEAN, MISSED_ENTRY, SKIPPED_POLE, POPPED_OUT, NO_ATTEMPT, BACK_WEAVE, VOID]",
            "[LEFT, RIGHT]",
            "[POLES_ONLY, WRAP, STRAIGHT]",
            "[LEFT, RIGHT]",
            "[ENTRY, EXIT]",
            "[NONE, LURE, GUIDE, CUE]",
            "[SINGLE, DOUBLE, HOP]",
            "[FOOD, TOY]",
            "[GAP, EXIT]",
            "[HAND, THROWN, PLACED]",
            "[NONE, JUMP, TUNNEL]");
  }

  private static byte[] written(TrainingEvent event) {
    RowOutput out = new RowOutput();
    PackedEvents.put(
        out, event, EventCodec.typeOf(event), CanonicalJson.of(HistoryEntries.CODEC.encode(event)));
    return out.done();
  }

  private static RepLogged rep(RandomGenerator random) {
    return new RepLogged(
        "r-" + random.nextInt(),
        "s-1",
        "dog-ß",
        any(Manoeuvre.values(), random),
        any(Outcome.values(), random),
        new RepDetails(
            perhaps(any(DogSide.values(), random), random),
            perhaps(any(BackChainStep.values(), random), random),
            perhaps(any(JumpTurn.values(), random), random),
            perhaps(random.nextDouble() * 20, random),
            perhaps("beyond the tunnel", random),
            perhaps(any(CrossAt.values(), random), random),
            perhaps(approach(random), random),
            perhaps(setup(random), random),
            perhaps("two", random),
            perhaps(random.nextInt(1, 25), random),
            perhaps(List.of(reward(random), reward(random)), random),
            perhaps(any(Help.values(), random), random),
            perhaps("h-1", random),
            perhaps("", random),
            perhaps(random.nextInt(1, 4), random),
            perhaps(any(Stride.values(), random), random)));
  }

  private static Reward reward(RandomGenerator random) {
    return new Reward(
        any(RewardKind.values(), random),
        any(RewardPlace.values(), random),
        perhaps(random.nextInt(-3, 400), random),
        perhaps(any(RewardDelivery.values(), random), random));
  }

  private static TimingRecorded timing(RandomGenerator random) {
    double entry = random.nextDouble() * 9e15;
    return new TimingRecorded(
        "gate-é",
        random.nextLong(1L << 53),
        random.nextLong(1L << 53),
        entry,
        entry + random.nextInt(9_000),
        perhaps(random.doubles(random.nextInt(24)).boxed().toList(), random),
        perhaps("s-1", random),
        perhaps("d-é", random),
        perhaps("r-1", random),
        perhaps(random.nextInt(101) / 1.0, random));
  }

  private static Setup setup(RandomGenerator random) {
    return new Setup(
        random.nextInt(2, 25),
        random.nextDouble(),
        any(LeadIn.values(), random),
        perhaps(random.nextDouble() * 10, random),
        perhaps(approach(random), random),
        perhaps(0.3, random),
        perhaps(-random.nextDouble() * 90, random),
        perhaps(random.nextBoolean() ? List.<String>of() : List.of("gate", "wire"), random));
  }

  private static Approach approach(RandomGenerator random) {
    ClockPosition clock = new ClockPosition(random.nextInt(7, 13), random.nextBoolean());
    return switch (random.nextInt(3)) {
      case 0 -> new Approach(new EntryAngle(random.nextDouble() * 300 - 150), null);
      case 1 -> new Approach(null, clock);
      default -> new Approach(clock.angle(), clock);
    };
  }

  private static <T> T any(T[] words, RandomGenerator random) {
    return words[random.nextInt(words.length)];
  }

  private static <T> @Nullable T perhaps(T value, RandomGenerator random) {
    return random.nextInt(3) == 0 ? null : value;
  }
}
