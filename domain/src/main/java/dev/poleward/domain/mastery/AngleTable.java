package dev.poleward.domain.mastery;

import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The reps that are asked about, by entry angle. Never changes. */
final class AngleTable {

  /** So old a rep still shows where it was run, and weighs nothing. */
  static final double WEIGHT_MIN = 1e-100;

  private static final double SECONDS_PER_DAY = 86_400;

  private final List<AngleCell> cells;

  private AngleTable(List<AngleCell> cells) {
    this.cells = cells;
  }

  /**
   * Counts and weighs reps.
   *
   * @param reps ascending by (time, id), so that sums are always formed in one order
   * @param agedTo when ages are taken; later reps have none
   */
  static AngleTable of(List<PlacedRep> reps, MasteryQuestion question, Instant agedTo) {
    Map<EntryAngle, AngleCell> cells = new HashMap<>();
    for (PlacedRep rep : reps) {
      if (question.isAbout(rep)) {
        EntryAngle angle = Objects.requireNonNull(rep.angle());
        cells
            .computeIfAbsent(angle, AngleCell::new)
            .add(
                question.of().made(rep),
                weight(rep.moment().time(), agedTo, question.halfLifeDays()));
      }
    }
    return new AngleTable(List.copyOf(cells.values()));
  }

  private static double weight(Instant time, Instant agedTo, @Nullable Double halfLifeDays) {
    if (halfLifeDays == null || !time.isBefore(agedTo)) {
      return 1;
    }
    Duration age = Duration.between(time, agedTo);
    double days = (age.getSeconds() + age.getNano() / 1e9) / SECONDS_PER_DAY;
    return Math.max(WEIGHT_MIN, StrictMath.pow(0.5, days / halfLifeDays));
  }

  /** The angles of an entry side, ascending by size; straight on is one of either side's. */
  List<AngleCell> of(EntrySide side) {
    return cells.stream()
        .filter(cell -> cell.angle().side() == side || cell.angle().side() == EntrySide.BOTH)
        .sorted(Comparator.comparingDouble(cell -> cell.angle().size()))
        .toList();
  }
}
