package dev.poleward.service.http;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.planning.PlanBlock;
import dev.poleward.domain.programme.DrillOfStage;
import java.util.Locale;
import java.util.Optional;

/** Why a drill stands in a plan, in a sentence. */
final class PlanWords {

  private PlanWords() {}

  static String reason(DogStanding dog, PlanBlock block) {
    String share = String.format(Locale.ROOT, "%.0f%%", 100 * block.expected().value());
    return switch (block.purpose()) {
      case WARM_UP -> "Solid: something that goes well, to begin with.";
      case MEND -> "Was solid and slips: mend it before anything new.";
      case REFRESH -> "Solid, but not practised for long: refresh it.";
      case WORK ->
          rungOf(dog, block.drill())
              .map(
                  pool ->
                      "About %s can be expected clean; %d more clean reps would decide this rung."
                          .formatted(share, pool.judgement().cleanRepsToDecide()))
              .orElse(
                  "On the way to a larger angle: from here about %s can be expected clean."
                      .formatted(share));
      case PROBE -> "A look ahead; failing it costs nothing.";
      case FINISH -> "Something that goes well, to end with.";
    };
  }

  /** Empty for what is no drill of the programme. */
  private static Optional<PoolStanding> rungOf(DogStanding dog, DrillOfStage drill) {
    return dog.pools().stream()
        .filter(pool -> pool.stage().id().equals(drill.stage()))
        .filter(pool -> pool.pool().drills().contains(drill.drill()))
        .findFirst();
  }
}
