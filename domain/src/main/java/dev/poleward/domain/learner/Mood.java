package dev.poleward.domain.learner;

/**
 * What passes within a session: attention that sags, frustration after misses running, and what the
 * last rewards promise. For one thread.
 */
final class Mood {

  /** Part of what rewards promise that is carried from rep to rep [C]. */
  private static final double PROMISE_CARRIED = 0.75;

  private static final double SECONDS_PER_MINUTE = 60;

  private final Temper.Attention attention;
  private final HalfLife rested;
  private final HalfLife forgiven;
  private double repsInTheLegs;
  private double missesRunning;
  private double promise = 1;

  Mood(Temper.Attention attention) {
    this.attention = attention;
    this.rested = new HalfLife(attention.recoveryMinutes());
    this.forgiven = new HalfLife(attention.forgivesMinutes());
  }

  /** The same mood in a dog of other attention. */
  Mood(Temper.Attention attention, Mood other) {
    this(attention);
    this.repsInTheLegs = other.repsInTheLegs;
    this.missesRunning = other.missesRunning;
    this.promise = other.promise;
  }

  Mood copy() {
    return new Mood(attention, this);
  }

  void pass(double seconds) {
    double minutes = seconds / SECONDS_PER_MINUTE;
    repsInTheLegs *= rested.left(minutes);
    missesRunning *= forgiven.left(minutes);
  }

  /** Logits that the mood adds to every skill; 0 for a fresh dog that is paid once a rep. */
  double logit() {
    double sag = attention.sagPerRep() * Math.max(0, repsInTheLegs - attention.freshReps());
    double pull = attention.rewardPull() * (promise / (1 + promise) - 0.5);
    return pull - sag - attention.missHurts() * frustration();
  }

  /** Misses running beyond the first. */
  double frustration() {
    return Math.max(0, missesRunning - 1);
  }

  void ran(boolean made) {
    repsInTheLegs++;
    missesRunning = made ? 0 : missesRunning + 1;
    promise *= PROMISE_CARRIED;
  }

  void rewarded(int pieces) {
    promise += (1 - PROMISE_CARRIED) * pieces;
  }
}
