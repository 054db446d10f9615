package dev.poleward.domain.mastery;

import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.List;

/**
 * How likely a dog makes the entry, against the size of the entry angle, for each entry side.
 *
 * @param question what was asked
 * @param agedTo when the ages of reps were taken
 * @param sides {@link EntrySide#POLE}, then {@link EntrySide#GAP}; always both
 */
public record MasteryCurve(MasteryQuestion question, Instant agedTo, List<SideMastery> sides) {

  /** Keeps the sides from changing. */
  public MasteryCurve {
    sides = List.copyOf(sides);
  }

  /**
   * The curve of a dog. Any reps will do, none too: what cannot be estimated is said to be so.
   *
   * @param reps the dog's, ascending by (time, id)
   * @param agedTo when the ages of reps are taken; a later rep has age 0
   */
  public static MasteryCurve of(List<PlacedRep> reps, MasteryQuestion question, Instant agedTo) {
    AngleTable table = AngleTable.of(reps, question, agedTo);
    return new MasteryCurve(
        question,
        agedTo,
        List.of(
            SideMastery.of(EntrySide.POLE, table.of(EntrySide.POLE), question),
            SideMastery.of(EntrySide.GAP, table.of(EntrySide.GAP), question)));
  }
}
