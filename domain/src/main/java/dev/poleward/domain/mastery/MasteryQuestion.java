package dev.poleward.domain.mastery;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.record.PlacedRep;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of a dog's reps. A filter that is null pools.
 *
 * @param poles only reps on that many poles
 * @param level the share of entries made that the threshold angle stands for, 0 &lt; level &lt; 1
 * @param halfLifeDays days in which a rep loses half its weight, above 0; null weighs all alike
 * @param limits how the threshold's limits are found
 * @param of what counts as made
 * @param manoeuvre only reps with it
 * @param dogSide only reps where it was said so
 * @param leadIn only reps from it
 * @param help only reps with that help; null and {@link Help#NONE}: only reps without any
 */
public record MasteryQuestion(
    @Nullable Integer poles,
    double level,
    @Nullable Double halfLifeDays,
    LimitMethod limits,
    Success of,
    @Nullable Manoeuvre manoeuvre,
    @Nullable DogSide dogSide,
    @Nullable LeadIn leadIn,
    @Nullable Help help) {

  /** The level that is asked for when none is named. */
  public static final double DEFAULT_LEVEL = 0.8;

  /** The half-life that is asked for when none is named. */
  public static final double DEFAULT_HALF_LIFE_DAYS = 30;

  /** Refuses a level that is no share between none and all, and a half-life that is no time. */
  public MasteryQuestion {
    if (!(level > 0 && level < 1)) {
      throw new IllegalArgumentException("a level lies between 0 and 1: " + level);
    }
    if (halfLifeDays != null && !(halfLifeDays > 0 && halfLifeDays < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("a half-life is above 0 and finite: " + halfLifeDays);
    }
  }

  /** Whether a rep is one of those that are asked about. */
  boolean isAbout(PlacedRep rep) {
    return rep.outcome() != Outcome.VOID
        && rep.angle() != null
        && helpOf(rep) == (help == null ? Help.NONE : help)
        && (manoeuvre == null || manoeuvre == rep.manoeuvre())
        && (dogSide == null || dogSide == rep.details().dogSide())
        && (poles == null || (rep.setup() != null && rep.setup().poles() == poles))
        && (leadIn == null || (rep.setup() != null && rep.setup().leadIn() == leadIn));
  }

  private static Help helpOf(PlacedRep rep) {
    Help said = rep.details().help();
    return said == null ? Help.NONE : said;
  }
}
