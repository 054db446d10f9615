package dev.poleward.service.http;

/**
 * Numbers as they are shown: millimetres of what is measured, thousandths of what is simulated.
 * More digits would claim what nobody knows.
 */
final class Thousandths {

  private Thousandths() {}

  /** The nearest thousandth. */
  static double of(double value) {
    return Math.rint(value * 1_000) / 1_000;
  }
}
