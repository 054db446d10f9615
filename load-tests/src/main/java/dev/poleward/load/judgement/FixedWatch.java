package dev.poleward.load.judgement;

/** Sounds when more than so many of the last reps are missed. For one thread. */
public final class FixedWatch implements Watch {

  private final boolean[] missed;
  private final int missesAllowed;
  private int seen;
  private int misses;

  /** Sounds at the first miss that makes {@code k} of {@code n} clean ones impossible. */
  public FixedWatch(int k, int n) {
    missed = new boolean[n];
    missesAllowed = n - k;
  }

  @Override
  public boolean sees(boolean clean) {
    int place = seen++ % missed.length;
    misses += (clean ? 0 : 1) - (missed[place] ? 1 : 0);
    missed[place] = !clean;
    return misses > missesAllowed;
  }
}
