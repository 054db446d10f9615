package dev.poleward.domain.learner;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import org.jspecify.annotations.Nullable;

/**
 * One rep as it is put to the dog.
 *
 * @param angle where the dog comes from
 * @param poles how many poles, 2 to 24
 * @param leadIn what the dog comes from
 * @param backChainStep how far the jump has been added backwards; null without one
 * @param manoeuvre what the handler does
 * @param dogSide on which side of the handler; null where there is none, as in a recall
 * @param help what the dog is helped with
 */
public record Task(
    EntryAngle angle,
    int poles,
    LeadIn leadIn,
    @Nullable BackChainStep backChainStep,
    Manoeuvre manoeuvre,
    @Nullable DogSide dogSide,
    Help help) {

  /** Fewest poles that have an entry. */
  public static final int POLES_MIN = 2;

  /** Most poles that stand in one line. */
  public static final int POLES_MAX = 24;

  /** Refuses lines of poles that nobody sets. */
  public Task {
    if (poles < POLES_MIN || poles > POLES_MAX) {
      throw new IllegalArgumentException("a line has 2 to 24 poles: " + poles);
    }
  }

  /** The dog starts where it is put, the handler runs along with it on the left, unaided. */
  public static Task plain(EntryAngle angle, int poles) {
    return new Task(angle, poles, LeadIn.NONE, null, Manoeuvre.ALONGSIDE, DogSide.LEFT, Help.NONE);
  }

  /** The same from elsewhere. */
  public Task from(EntryAngle other) {
    return new Task(other, poles, leadIn, backChainStep, manoeuvre, dogSide, help);
  }

  /** The same behind another lead-in. */
  public Task behind(LeadIn other) {
    return new Task(angle, poles, other, backChainStep, manoeuvre, dogSide, help);
  }

  /** The same handled otherwise. */
  public Task handled(Manoeuvre other, @Nullable DogSide otherSide) {
    return new Task(angle, poles, leadIn, backChainStep, other, otherSide, help);
  }

  /** The same with help. */
  public Task helped(Help other) {
    return new Task(angle, poles, leadIn, backChainStep, manoeuvre, dogSide, other);
  }
}
