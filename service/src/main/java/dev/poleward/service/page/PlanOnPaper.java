package dev.poleward.service.page;

import dev.poleward.domain.care.CareNote;
import dev.poleward.domain.layout.Setup;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A plan as it is handed out.
 *
 * @param plan its id
 * @param dog the dog's call name
 * @param day when it was made, the club's day
 * @param programme what it is called
 * @param stage what the stage is called that has its turn; null where the dog is through
 * @param text why it has less than was asked for; null where it has all
 * @param drills in their order
 * @param notes what to mind
 */
public record PlanOnPaper(
    String plan,
    String dog,
    LocalDate day,
    String programme,
    @Nullable String stage,
    @Nullable String text,
    List<Drill> drills,
    List<CareNote> notes) {

  /**
   * One drill of it.
   *
   * @param setup what has to stand
   * @param words what is to be done, in words
   * @param reps how often
   * @param expectedClean share of clean reps, 0 to 1; null where nothing is expected
   * @param reward what a rep earns, in words; null where nothing is said
   * @param reason why it is in the plan; null where nothing is said
   * @param easier what to do after two misses running, in words; null where there is nothing
   */
  public record Drill(
      Setup setup,
      String words,
      int reps,
      @Nullable Double expectedClean,
      @Nullable String reward,
      @Nullable String reason,
      @Nullable String easier) {}

  /** Keeps the lists from changing. */
  public PlanOnPaper {
    drills = List.copyOf(drills);
    notes = List.copyOf(notes);
  }

  /** How many reps it has. */
  int reps() {
    return drills.stream().mapToInt(Drill::reps).sum();
  }
}
