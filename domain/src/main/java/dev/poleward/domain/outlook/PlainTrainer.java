package dev.poleward.domain.outlook;

import dev.poleward.domain.outlook.Curriculum.Exercise;
import dev.poleward.domain.outlook.Curriculum.Pool;
import java.util.List;

/**
 * A plain trainer, who goes through a programme in its order and knows no better plan: the first
 * stage that is not done, in it the first pool that is not passed, in turns with the same angle on
 * the other entry side; handlings that were never clean first, the others in turns; after two
 * misses running one rep of what was passed last [C]. For one dog and one thread.
 */
public final class PlainTrainer {

  private static final int MISSES_RUNNING = 2;

  private final Curriculum curriculum;
  private final Notebook notebook;
  private final int[] turns;
  private int missesRunning;
  private int passedLast = -1;
  private int working = -1;

  /**
   * A trainer with a dog.
   *
   * @param notebook as it stands; the trainer goes on with it
   */
  public PlainTrainer(Notebook notebook) {
    this.notebook = notebook;
    this.curriculum = notebook.curriculum();
    this.turns = new int[curriculum.pools().size()];
  }

  /** What is written down so far. */
  public Notebook notebook() {
    return notebook;
  }

  /** What is run next; not to be asked when all is done. */
  public Exercise next() {
    if (missesRunning >= MISSES_RUNNING && passedLast >= 0) {
      missesRunning = 0;
      return exercise(passedLast);
    }
    working = pool();
    return exercise(working);
  }

  private int pool() {
    if (working >= 0) {
      int across = curriculum.pools().get(working).across();
      if (across != working && !notebook.isPassed(across) && isNow(across)) {
        return across;
      }
      if (!notebook.isPassed(working) && isNow(working)) {
        return working;
      }
    }
    for (int pool = 0; pool < curriculum.pools().size(); pool++) {
      if (!notebook.isPassed(pool)) {
        return pool;
      }
    }
    throw new IllegalStateException("all is done");
  }

  private boolean isNow(int pool) {
    return curriculum.pools().get(pool).stage() == notebook.stage();
  }

  private Exercise exercise(int place) {
    Pool pool = curriculum.pools().get(place);
    List<Exercise> drills = pool.drills();
    int turn = turns[place]++;
    if (!notebook.isPassed(place)) {
      for (int i = 0; i < drills.size(); i++) {
        Exercise each = drills.get((turn + i) % drills.size());
        if (!notebook.wasClean(place, each.handling())) {
          return each;
        }
      }
    }
    return drills.get(turn % drills.size());
  }

  /** How what {@link #next} said went. */
  public void ran(Exercise exercise, boolean clean) {
    missesRunning = clean ? 0 : missesRunning + 1;
    boolean before = working >= 0 && notebook.isPassed(working);
    notebook.read(exercise, clean);
    if (working >= 0 && !before && notebook.isPassed(working)) {
      passedLast = working;
    }
  }
}
