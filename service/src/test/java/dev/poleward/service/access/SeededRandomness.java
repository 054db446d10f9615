package dev.poleward.service.access;

import java.util.Random;

/** Foreseeable, for tests only. */
final class SeededRandomness implements Randomness {

  private final Random random;

  SeededRandomness(long seed) {
    this.random = new Random(seed);
  }

  @Override
  public synchronized void fill(byte[] bytes) {
    random.nextBytes(bytes);
  }
}
