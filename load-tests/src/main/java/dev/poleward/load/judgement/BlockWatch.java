package dev.poleward.load.judgement;

/**
 * Looks back after every so many reps, and sounds when fewer were clean than asked for. For one
 * thread.
 */
public final class BlockWatch implements Watch {

  private final int clean;
  private final int of;
  private int seen;
  private int cleanSeen;

  /** Asks for {@code clean} of {@code of}. */
  public BlockWatch(int clean, int of) {
    this.clean = clean;
    this.of = of;
  }

  @Override
  public boolean sees(boolean isClean) {
    seen++;
    cleanSeen += isClean ? 1 : 0;
    if (seen < of) {
      return false;
    }
    boolean sounds = cleanSeen < clean;
    seen = 0;
    cleanSeen = 0;
    return sounds;
  }
}
