package dev.poleward.service.http;

import dev.poleward.domain.pace.ClubTimings;
import dev.poleward.domain.pace.Pace;
import dev.poleward.domain.pace.PairedTimings;
import dev.poleward.domain.pace.Slowing;
import dev.poleward.service.http.DogReads.Seen;
import dev.poleward.service.render.CsvTable;
import dev.poleward.service.render.DogTimes;
import dev.poleward.service.render.Studio;
import dev.poleward.service.render.TimesPicture;
import java.time.Instant;
import java.util.List;
import java.util.Set;

/** How fast a dog weaves. Safe for use by many threads. */
final class TimingRoutes {

  /** What it comes as, the usual form first. */
  static final List<String> FORMS = List.of(Answer.JSON, CsvTable.CSV, Pictures.SVG, Pictures.PNG);

  /** Over fewer days nobody can say whether a dog slows. */
  static final int DAYS_MIN = (int) Slowing.SPAN.toDays();

  static final int DAYS_MAX = 730;
  private static final int DAYS_USUAL = 90;

  private final DogReads dogs;
  private final Pictures pictures;

  TimingRoutes(DogReads dogs, Studio studio) {
    this.dogs = dogs;
    this.pictures = new Pictures(studio);
  }

  /** {@code GET …/dogs/{dog}/timing}. */
  Answer timing(Call call) {
    return dogs.read(
        call,
        Set.of("days", "width"),
        (parameters, day) -> {
          int days = (int) parameters.whole("days", DAYS_MIN, DAYS_MAX, DAYS_USUAL);
          int width = Pictures.width(parameters);
          return dog -> timing(call, dog, days, width);
        });
  }

  private Answer timing(Call call, Seen dog, int days, int width) {
    LocalDay day = dog.day();
    Instant from = day.date().minusDays(days - 1L).atStartOfDay(day.zone()).toInstant();
    PairedTimings timings =
        new ClubTimings(dog.placement(), from, day.end()).ofDog(dog.asked(), dog.reps());
    Pace pace = Pace.of(timings.reps(), from, day.end(), day.zone());
    return switch (call.form()) {
      case CsvTable.CSV ->
          Answer.text(CsvTable.CSV + "; charset=utf-8", TimingTable.of(dog.asked(), pace));
      case Pictures.SVG, Pictures.PNG ->
          pictures.painted(
              call,
              TimesPicture.of(
                  new DogTimes(
                      dog.inPicture(), days, pace, TimingShape.text(pace.slowing().verdict())),
                  width));
      default -> Answer.json(200, TimingShape.of(dog.asked(), day, days, timings, pace));
    };
  }
}
