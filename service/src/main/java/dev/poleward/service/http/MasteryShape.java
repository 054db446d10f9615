package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.mastery.AnglePoint;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.LimitMethod;
import dev.poleward.domain.mastery.LogisticFit;
import dev.poleward.domain.mastery.MasteryQuestion;
import dev.poleward.domain.mastery.SideMastery;
import dev.poleward.domain.mastery.Threshold;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.render.DogCurve;
import org.jspecify.annotations.Nullable;

/** Angle mastery as the contract shows it. Immutable; safe for use by many threads. */
final class MasteryShape {

  private static final String METHOD = "firth-logistic";

  ObjectNode of(DogCurve of) {
    MasteryQuestion question = of.curve().question();
    return new Writing()
        .put("dog", of.dog())
        .put("poles", question.poles())
        .put("level", question.level())
        .put("halfLifeDays", question.halfLifeDays())
        .put("interval", question.limits())
        .put("of", question.of())
        .put("manoeuvre", question.manoeuvre())
        .put("dogSide", question.dogSide())
        .put("leadIn", question.leadIn())
        .put("help", question.help())
        .putPrinted("agedTo", of.agedTo())
        .putObjects("sides", of.curve().sides(), this::side)
        .done();
  }

  private ObjectNode side(SideMastery side) {
    return new Writing()
        .put("entrySide", side.side())
        .put("reps", side.reps())
        .put("made", side.made())
        .put("effectiveReps", side.effectiveReps())
        .put("fit", fit(side.fit()))
        .put("threshold", ThresholdShape.of(side.threshold()).written())
        .put("shapesDisagree", side.shapesDisagree())
        .putObjects("points", side.points(), MasteryShape::point)
        .done();
  }

  private static @Nullable ObjectNode fit(@Nullable LogisticFit fit) {
    if (fit == null) {
      return null;
    }
    ObjectNode shape =
        new Writing()
            .put("method", METHOD)
            .put("intercept", fit.intercept())
            .put("slopePerDegree", fit.slope())
            .done();
    ArrayNode covariance = shape.putArray("covariance");
    covariance.add(row(fit.varianceOfIntercept(), fit.covariance()));
    covariance.add(row(fit.covariance(), fit.varianceOfSlope()));
    return shape.put("penalisedLogLikelihood", fit.penalisedLogLikelihood());
  }

  private static ArrayNode row(double first, double second) {
    return JsonNodeFactory.instance.arrayNode().add(first).add(second);
  }

  private static ObjectNode point(AnglePoint point) {
    Writing out =
        new Writing()
            .putPrinted("clock", point.angle().clock().orElse(null))
            .put("angle", point.angle().degrees())
            .put("size", point.angle().size())
            .put("reps", point.reps())
            .put("made", point.made())
            .put("weight", point.weight());
    Estimate fitted = point.fitted();
    if (fitted != null) {
      out.put("estimate", fitted.value()).put("lower", fitted.lower()).put("upper", fitted.upper());
    }
    Estimate observed = point.observed();
    return out.put(
            "observed",
            new Writing()
                .put("share", observed.value())
                .put("lower", observed.lower())
                .put("upper", observed.upper())
                .done())
        .put("isotonic", point.isotonic())
        .done();
  }

  /** A threshold flattened: what it is, and what there is of numbers. */
  record ThresholdShape(
      String status,
      @Nullable Double angle,
      @Nullable Double lower,
      @Nullable Double upper,
      @Nullable LimitMethod interval) {

    static ThresholdShape of(Threshold threshold) {
      return switch (threshold) {
        case Threshold.Estimated at ->
            new ThresholdShape("estimated", at.degrees(), at.lower(), at.upper(), at.limits());
        case Threshold.BeyondTried beyond ->
            new ThresholdShape("beyond-tried", null, beyond.lower(), null, beyond.limits());
        case Threshold.BelowTried below ->
            new ThresholdShape("below-tried", null, null, below.upper(), below.limits());
        case Threshold.NotEnoughReps _ ->
            new ThresholdShape("not-enough-reps", null, null, null, null);
        case Threshold.NoFall _ -> new ThresholdShape("no-fall", null, null, null, null);
      };
    }

    ObjectNode written() {
      return new Writing()
          .put("status", status)
          .put("angle", angle)
          .put("lower", lower)
          .put("upper", upper)
          .put("interval", interval)
          .done();
    }
  }
}
