package dev.poleward.service.http;

import dev.poleward.domain.mastery.MasteryCurve;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.service.http.ClubReads.Reader;
import dev.poleward.service.http.MasteryParameters.Read;
import dev.poleward.service.render.CsvTable;
import dev.poleward.service.render.DogCurve;
import dev.poleward.service.render.MasteryPictures;
import dev.poleward.service.render.Studio;
import java.util.List;
import java.util.Optional;

/** How well a dog finds the entry, by angle. Safe for use by many threads. */
final class MasteryRoutes {

  /** What it comes as, the usual form first. */
  static final List<String> FORMS = List.of(Answer.JSON, CsvTable.CSV, Pictures.SVG, Pictures.PNG);

  private final ClubReads reads;
  private final PlacedReps placed;
  private final LocalDays days;
  private final MasteryShape shape;
  private final Pictures pictures;

  MasteryRoutes(
      ClubReads reads, PlacedReps placed, LocalDays days, MasteryShape shape, Studio studio) {
    this.reads = reads;
    this.placed = placed;
    this.days = days;
    this.shape = shape;
    this.pictures = new Pictures(studio);
  }

  /** {@code GET …/dogs/{dog}/angle-mastery}. */
  Answer angleMastery(Call call) {
    return reads.remembered(call, days::agedTo, this::answer);
  }

  private Answer answer(Call call, Reader reader) {
    return switch (MasteryParameters.of(call)) {
      case Read.Faulty(Problem problem) -> call.refused(problem);
      case Read.Understood(MasteryParameters parameters) -> answer(call, reader, parameters);
    };
  }

  private Answer answer(Call call, Reader reader, MasteryParameters asked) {
    String dog = call.inPath("dog");
    Placement placement = new Placement(reader.reading().facts(), asked.view());
    Optional<DogRecord> known =
        reader.maySee(placement.identity(), dog)
            ? new Registry(placement, asked.view()).dog(dog)
            : Optional.empty();
    if (known.isEmpty()) {
      return call.refused(ProblemKind.NOT_FOUND, "There is no such dog.");
    }
    LocalDay day = days.of(reader, asked.view());
    MasteryCurve curve =
        MasteryCurve.of(
            placed.ofDog(reader.reading(), placement, asked.view(), dog),
            asked.question(),
            day.end());
    return shown(call, asked, new DogCurve(dog, known.get().callName(), day.date(), curve));
  }

  private Answer shown(Call call, MasteryParameters asked, DogCurve of) {
    return switch (call.form()) {
      case CsvTable.CSV -> Answer.text(CsvTable.CSV + "; charset=utf-8", MasteryTable.of(of));
      case Pictures.SVG, Pictures.PNG ->
          pictures.painted(call, MasteryPictures.draw(of, asked.picture(), asked.width()));
      default -> Answer.json(200, shape.of(of));
    };
  }
}
