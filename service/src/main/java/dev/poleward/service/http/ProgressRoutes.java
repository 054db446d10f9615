package dev.poleward.service.http;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.DrillCount;
import dev.poleward.domain.judgement.DrillCounts;
import dev.poleward.domain.judgement.NextRung;
import dev.poleward.domain.judgement.NextRungs;
import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.planning.CleanForecast;
import dev.poleward.service.http.DogReads.Seen;
import dev.poleward.service.render.CsvTable;
import dev.poleward.service.render.DogWay;
import dev.poleward.service.render.Studio;
import dev.poleward.service.render.WayPicture;
import java.util.List;
import java.util.Set;

/** Where a dog stands in its programme, and what it has run. Safe for use by many threads. */
final class ProgressRoutes {

  /** What it comes as, the usual form first. */
  static final List<String> FORMS = List.of(Answer.JSON, CsvTable.CSV, Pictures.SVG, Pictures.PNG);

  private final DogReads dogs;
  private final ProgressShape shape;
  private final Pictures pictures;

  ProgressRoutes(DogReads dogs, ProgressShape shape, Studio studio) {
    this.dogs = dogs;
    this.shape = shape;
    this.pictures = new Pictures(studio);
  }

  /** {@code GET …/dogs/{dog}/progress}. */
  Answer progress(Call call) {
    return dogs.read(
        call,
        Set.of("width"),
        (parameters, _) -> {
          int width = Pictures.width(parameters);
          return dog -> answer(call, dog, width);
        });
  }

  private Answer answer(Call call, Seen dog, int width) {
    DrillCounts counts = DrillCounts.of(dog.reps());
    if (call.form().equals(CsvTable.CSV)) {
      return Answer.text(
          CsvTable.CSV + "; charset=utf-8", ProgressTable.of(dog.asked(), shown(counts)));
    }
    LocalDay day = dog.day();
    StandingHistory history = dog.history(dog.view().asOf());
    DogStanding standing = dog.standing(history, day.end());
    List<NextRung> next = NextRungs.of(standing, CleanForecast.of(dog.reps(), day.end()));
    return switch (call.form()) {
      case Pictures.SVG, Pictures.PNG ->
          pictures.painted(
              call,
              WayPicture.of(
                  new DogWay(dog.inPicture(), history.inForce(), standing, reasoned(next)), width));
      default ->
          Answer.json(
              200,
              shape.of(
                  dog.asked(),
                  day.date(),
                  history.inForce(),
                  standing,
                  next,
                  counts,
                  shown(counts)));
    };
  }

  private static List<DogWay.Next> reasoned(List<NextRung> next) {
    return next.stream().map(each -> new DogWay.Next(each, VerdictWords.reason(each))).toList();
  }

  private static List<DrillCount> shown(DrillCounts counts) {
    return counts.drills().stream().limit(ProgressShape.DRILLS_MAX).toList();
  }
}
