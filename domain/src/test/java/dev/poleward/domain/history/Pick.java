package dev.poleward.domain.history;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Choices made by a seeded generator. For one thread. */
final class Pick {

  private final Random random;

  Pick(long seed) {
    this.random = new Random(seed);
  }

  /** From 0 up to, but not including, {@code bound}. */
  int below(int bound) {
    return random.nextInt(bound);
  }

  /** Once in that many times. */
  boolean onceIn(int times) {
    return random.nextInt(times) == 0;
  }

  <T> T of(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  <E extends Enum<E>> E of(Class<E> choices) {
    return of(List.of(choices.getEnumConstants()));
  }

  <E extends Enum<E>> @Nullable E sometimesOf(int times, Class<E> choices) {
    return onceIn(times) ? of(choices) : null;
  }

  void shuffle(List<?> list) {
    Collections.shuffle(list, random);
  }

  /** Null, but for once in that many times. */
  <T> @Nullable T sometimes(int times, Supplier<T> choice) {
    return onceIn(times) ? choice.get() : null;
  }
}
