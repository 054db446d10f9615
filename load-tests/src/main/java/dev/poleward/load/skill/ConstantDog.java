package dev.poleward.load.skill;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A dog that learns nothing and forgets nothing: its chance of the entry is a logistic curve over
 * the size of the angle.
 *
 * @param threshold where the chance is the level asked for, in degrees
 * @param slope of the curve, in logits a degree, below 0
 * @param reps how many it runs
 */
public record ConstantDog(double threshold, double slope, AngleGrid grid, int reps) {

  /** When the last rep is run. */
  public static final Instant LAST = Instant.parse("2026-05-04T17:00:00Z");

  /** Over how long the reps are spread evenly: four of the customary half-lives. */
  public static final Duration SPAN = Duration.ofDays(120);

  /** One training record of this dog, ascending in time. */
  public List<PlacedRep> trained(double level, SplittableRandom random) {
    double logitOfLevel = Math.log(level / (1 - level));
    List<PlacedRep> trained = new ArrayList<>(reps);
    for (int rep = 0; rep < reps; rep++) {
      double size = grid.size(random.nextInt(grid.angles()));
      double chance = 1 / (1 + Math.exp(-(logitOfLevel + slope * (size - threshold))));
      Outcome outcome = random.nextDouble() < chance ? Outcome.CLEAN : Outcome.MISSED_ENTRY;
      Instant time = LAST.minus(SPAN.multipliedBy(reps - 1 - rep).dividedBy(reps));
      trained.add(placed(rep, time, new EntryAngle(size), outcome));
    }
    return trained;
  }

  private static PlacedRep placed(int number, Instant time, EntryAngle angle, Outcome outcome) {
    return new PlacedRep(
        new Moment(time, "e-%05d".formatted(number)),
        "r-" + number,
        "s-1",
        "juniper",
        Manoeuvre.ALONGSIDE,
        outcome,
        RepDetails.NONE,
        angle,
        null,
        null,
        null,
        List.of(),
        List.of());
  }
}
