package dev.poleward.service.access;

/**
 * Where key ids and secrets come from: {@code SecureRandom::nextBytes} when the service runs. Must
 * be safe for use by many threads, and nobody may be able to foresee what it gives.
 */
@FunctionalInterface
public interface Randomness {

  /** Fills {@code bytes}. */
  void fill(byte[] bytes);
}
