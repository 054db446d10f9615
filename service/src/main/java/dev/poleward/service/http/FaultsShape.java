package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.judgement.AngleBand;
import dev.poleward.domain.judgement.EvenSpread;
import dev.poleward.domain.judgement.FaultGroup;
import dev.poleward.domain.judgement.FaultReview;
import dev.poleward.domain.judgement.FaultsOfLine;
import dev.poleward.service.codec.Writing;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Faults as they are shown. */
final class FaultsShape {

  private FaultsShape() {}

  static ObjectNode of(String dog, LocalDay day, int days, FaultReview review) {
    Writing shape =
        new Writing().put("dog", dog).putPrinted("agedTo", day.date()).put("days", days);
    return seen(shape, review).done();
  }

  /** Adds which faults there were, and where. */
  static Writing seen(Writing shape, FaultReview review) {
    return shape
        .put("all", group(new Writing(), review.all()).done())
        .put("helped", review.helped())
        .putObjects("lines", review.lines(), FaultsShape::line)
        .putObjects("angles", review.angles().groups(), FaultsShape::angle)
        .put("chanceOfAngles", review.angles().chance())
        .putObjects(
            "manoeuvres",
            review.manoeuvres().groups(),
            each -> group(new Writing().put("manoeuvre", each.of()), each).done())
        .put("chanceOfManoeuvres", review.manoeuvres().chance());
  }

  private static ObjectNode angle(FaultGroup<AngleBand> group) {
    AngleBand band = group.of();
    Writing shape =
        new Writing()
            .put("entrySide", band.side())
            .put("beyond", band.from())
            .put("upTo", band.to());
    return group(shape, group).done();
  }

  private static Writing group(Writing shape, FaultGroup<?> group) {
    shape.put("reps", group.reps()).put("faulty", group.faulty());
    shape.putObjects(
        "faults",
        List.copyOf(group.faults().entrySet()),
        (Map.Entry<Outcome, Integer> each) ->
            new Writing().put("fault", each.getKey()).put("reps", each.getValue()).done());
    if (group.reps() > 0) {
      shape.put("share", ShareShape.of(group.share())).put("standsOut", group.standsOut());
    }
    return shape;
  }

  private static ObjectNode line(FaultsOfLine line) {
    List<EvenSpread.Place> places = line.spread().places();
    return new Writing()
        .put("poles", line.poles())
        .put("reps", line.reps())
        .put("withoutPole", line.withoutPole())
        .putObjects(
            "atPoles",
            IntStream.range(0, places.size()).boxed().toList(),
            pole -> place(pole + 1, places.get(pole)))
        .put("chance", line.spread().chance())
        .done();
  }

  private static ObjectNode place(int pole, EvenSpread.Place place) {
    Writing shape = new Writing().put("pole", pole).put("faults", place.faults());
    if (place.share() != null) {
      shape.put("share", ShareShape.of(place.share()));
    }
    return shape.put("standsOut", place.standsOut()).done();
  }
}
