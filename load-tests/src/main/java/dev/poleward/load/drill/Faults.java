package dev.poleward.load.drill;

import dev.poleward.load.figures.Report;
import java.util.ArrayList;
import java.util.List;

/** What did not hold in a drill. For one thread. */
public final class Faults {

  private static final int EXIT_CODE = 1;
  private static final int SHOWN_MAX = 20;

  private final List<String> found = new ArrayList<>();

  /** Notes a fault unless {@code holds}. */
  public void unless(boolean holds, String fault, Object... values) {
    if (!holds) {
      String text = fault.formatted(values);
      found.add(text);
      if (found.size() <= SHOWN_MAX) {
        Report.note("DOES NOT HOLD: %s", text);
      }
    }
  }

  public boolean isEmpty() {
    return found.isEmpty();
  }

  /** Says how the drill ended; ends the program with 1 when something did not hold. */
  public void endProgram() {
    if (found.isEmpty()) {
      Report.note("%nEverything held.");
      return;
    }
    Report.note("%n%d faults, %d at most are shown:", found.size(), SHOWN_MAX);
    found.stream().limit(SHOWN_MAX).forEach(fault -> Report.note("- %s", fault));
    System.exit(EXIT_CODE);
  }
}
