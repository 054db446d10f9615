package dev.poleward.service.http;

import dev.poleward.domain.event.AimEvent.TrialRun;
import dev.poleward.domain.outlook.Homework;
import dev.poleward.domain.outlook.Season;
import dev.poleward.domain.outlook.Trials;
import dev.poleward.domain.record.DaySpan;
import dev.poleward.service.http.DogReads.Seen;
import dev.poleward.service.render.CsvTable;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** Homework, trials beside training, and the year in review. Safe for use by many threads. */
final class AimRoutes {

  /** What a season comes as, the usual form first. */
  static final List<String> SEASON_FORMS = List.of(Answer.JSON, CsvTable.CSV);

  private final DogReads dogs;
  private final HomeworkShape homework = new HomeworkShape();
  private final TrialsShape trials = new TrialsShape();
  private final SeasonShape season = new SeasonShape();

  AimRoutes(DogReads dogs) {
    this.dogs = dogs;
  }

  /** {@code GET …/dogs/{dog}/homework}. */
  Answer homework(Call call) {
    return dogs.read(
        call,
        Set.of(),
        (_, day) ->
            dog ->
                Answer.json(
                    200,
                    homework.of(
                        dog.asked(),
                        day,
                        Homework.of(
                            dog.dog(), dog.registry(), dog.reps(), day.date(), day.zone()))));
  }

  /** {@code GET …/dogs/{dog}/trials}. */
  Answer trials(Call call) {
    return dogs.read(
        call,
        Set.of(),
        (_, day) ->
            dog ->
                Answer.json(
                    200,
                    trials.of(dog.asked(), day, Trials.of(dog.dog(), dog.registry(), dog.reps()))));
  }

  /** {@code GET …/dogs/{dog}/season}. */
  Answer season(Call call) {
    return dogs.read(
        call,
        Set.of("from", "to"),
        (parameters, day) -> {
          LocalDate to = Objects.requireNonNullElse(parameters.date("to"), day.date());
          LocalDate from =
              Objects.requireNonNullElse(parameters.date("from"), to.minusYears(1).plusDays(1));
          if (from.isAfter(to)) {
            parameters.refuse("from", "must not be after to");
          } else if (from.plusDays(DaySpan.DAYS_MAX).isBefore(to)) {
            parameters.refuse(
                "from", "must be at most %d days before to".formatted(DaySpan.DAYS_MAX));
          }
          return dog -> season(call, dog, new DaySpan(from, to, day.zone()));
        });
  }

  private Answer season(Call call, Seen dog, DaySpan span) {
    Season made =
        Season.of(
            dog.reps(),
            dog.registry().aims(dog.dog(), TrialRun.class),
            dog.standing(dog.history(span.last()), span.end()),
            span);
    return call.form().equals(CsvTable.CSV)
        ? Answer.text(CsvTable.CSV + "; charset=utf-8", SeasonTable.of(dog.asked(), made))
        : Answer.json(200, season.of(dog.asked(), dog.day(), made));
  }
}
