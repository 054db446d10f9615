package dev.poleward.domain.judgement;

/**
 * How many were clean.
 *
 * @param clean at least 0, at most {@code of}
 * @param of how many there were
 */
public record Tally(int clean, int of) {

  /** Refuses what cannot be counted. */
  public Tally {
    if (clean < 0 || clean > of) {
      throw new IllegalArgumentException("cannot be counted: %d of %d".formatted(clean, of));
    }
  }

  /** How many were missed. */
  public int missed() {
    return of - clean;
  }

  /** The share that was clean; a half of none. */
  public double share() {
    return of == 0 ? 0.5 : (double) clean / of;
  }
}
