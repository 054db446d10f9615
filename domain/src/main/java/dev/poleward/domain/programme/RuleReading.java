package dev.poleward.domain.programme;

import dev.poleward.domain.programme.MovingOnRule.KOfN;
import dev.poleward.domain.programme.MovingOnRule.Run;
import dev.poleward.domain.programme.MovingOnRule.Sequential;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Reads the rule for moving on of a programme or of a stage. */
final class RuleReading {

  /** The methods, as they are written. */
  private enum Method {
    K_OF_N(List.of("k", "n")),
    RUN(List.of("length")),
    SEQUENTIAL(List.of("mastered", "notYet", "wrongMoveOn", "wrongHold"));

    private final List<String> members;

    Method(List<String> members) {
      this.members = members;
    }
  }

  private static final int REPS_MAX = 100;
  private static final int STEP_BACK_MAX = 20;
  private static final String ABOVE_0_BELOW_HALF = "above 0 and below 0.5";

  private final Part rule;
  private final int stepBackAfter;
  private final double wrongMisfit;

  private RuleReading(Part rule) {
    this.rule = rule;
    this.stepBackAfter = whole("stepBackAfter", MovingOnRule.STEP_BACK_AFTER_USUAL, STEP_BACK_MAX);
    this.wrongMisfit = wrong("wrongMisfit", MovingOnRule.WRONG_MISFIT_USUAL);
  }

  /** The rule of a part; null when it has none or none in order. */
  static @Nullable MovingOnRule read(Part part) {
    Part rule = part.part("rule");
    return rule == null ? null : new RuleReading(rule).read();
  }

  private @Nullable MovingOnRule read() {
    rule.require("method");
    Method method = rule.choice("method", Method.class);
    if (method == null) {
      return null;
    }
    for (Method other : Method.values()) {
      if (other != method) {
        other.members.stream().filter(rule::has).forEach(name -> refuse(name, method));
      }
    }
    return switch (method) {
      case K_OF_N -> kOfN();
      case RUN -> new Run(whole("length", Run.LENGTH_USUAL, REPS_MAX), stepBackAfter, wrongMisfit);
      case SEQUENTIAL -> sequential();
    };
  }

  private void refuse(String name, Method method) {
    rule.fault(name, "does not belong to the method " + Part.written(method));
  }

  private KOfN kOfN() {
    int k = whole("k", KOfN.K_USUAL, REPS_MAX);
    int n = whole("n", KOfN.N_USUAL, REPS_MAX);
    if (k > n) {
      rule.fault("k", "must not be above n");
    }
    return new KOfN(k, n, stepBackAfter, wrongMisfit);
  }

  private Sequential sequential() {
    double mastered = share("mastered", Sequential.MASTERED_USUAL);
    double notYet = share("notYet", Sequential.NOT_YET_USUAL);
    if (!(notYet < mastered)) {
      rule.fault("notYet", "must be below mastered");
    }
    return new Sequential(
        mastered,
        notYet,
        wrong("wrongMoveOn", Sequential.WRONG_USUAL),
        wrong("wrongHold", Sequential.WRONG_USUAL),
        stepBackAfter,
        wrongMisfit);
  }

  private int whole(String name, int usual, int max) {
    return Objects.requireNonNullElse(rule.whole(name, 1, max), usual);
  }

  private double share(String name, double usual) {
    return Objects.requireNonNullElse(
        rule.number(name, v -> v > 0 && v < 1, ProgrammeDocument.ABOVE_0_BELOW_1), usual);
  }

  private double wrong(String name, double usual) {
    return Objects.requireNonNullElse(
        rule.number(name, v -> v > 0 && v < 0.5, ABOVE_0_BELOW_HALF), usual);
  }
}
