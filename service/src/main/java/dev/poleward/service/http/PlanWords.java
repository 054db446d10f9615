package dev.poleward.service.http;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.RungJudgement;
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
      case WARM_UP -> "Something that goes well, to begin with.";
      case MEND -> "Was solid and slips: mend it before anything new.";
      case REFRESH -> "Solid, but not practised for long: refresh it.";
      case WORK -> work(rungOf(dog, block.drill()), block.drill(), share);
      case PROBE -> "A look ahead, %s; failing it costs nothing.".formatted(expected(share));
      case KEEP -> "Solid: a few reps, so that it stays so.";
      case FINISH -> "Something that goes well, to end with.";
    };
  }

  private static String expected(String share) {
    return "about " + share + " can be expected clean";
  }

  private static String work(Optional<PoolStanding> rung, DrillOfStage of, String share) {
    String expected = expected(share);
    if (rung.isEmpty()) {
      return "On the way to a larger angle: from here " + expected + ".";
    }
    RungJudgement judgement = rung.get().judgement();
    return judgement.missing().contains(of.drill().handling())
        ? "Was not clean here with this handling yet; " + expected + "."
        : "To pass this rung, %s; %s.".formatted(VerdictWords.cleanReps(judgement), expected);
  }

  /** Empty for what is no drill of the programme. */
  private static Optional<PoolStanding> rungOf(DogStanding dog, DrillOfStage drill) {
    return dog.pools().stream()
        .filter(pool -> pool.stage().id().equals(drill.stage()))
        .filter(pool -> pool.pool().drills().contains(drill.drill()))
        .findFirst();
  }
}
