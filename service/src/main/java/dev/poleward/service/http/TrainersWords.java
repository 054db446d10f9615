package dev.poleward.service.http;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.JumpTurn;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.planning.PlannedDrill;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.Rung;
import dev.poleward.domain.programme.RungPool;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What trainers say of drills, rungs and handlings, for sentences in answers. */
final class TrainersWords {

  private TrainersWords() {}

  /**
   * {@code 4 poles behind a tunnel, 45° on the pole side (1:30), rear cross with the dog on the
   * left}.
   */
  static String drill(Drill drill) {
    return setup(drill) + ", " + entry(drill.rung()) + ", " + handling(drill.handling());
  }

  static String setup(Drill drill) {
    return drill.poles()
        + " poles"
        + runUp(drill.runUp().leadIn(), drill.runUp().step(), drill.runUp().turn());
  }

  /** What stands for all drills of one verdict, with both turns where it is about both. */
  static String setup(RungPool pool) {
    Drill first = pool.drills().getFirst();
    List<JumpTurn> turns =
        pool.drills().stream()
            .map(each -> each.runUp().turn())
            .filter(Objects::nonNull)
            .distinct()
            .toList();
    return turns.size() < 2
        ? setup(first)
        : first.poles()
            + " poles after a wrap round the jump "
            + turns.stream()
                .map(turn -> "to the " + lower(turn))
                .collect(Collectors.joining(" and "));
  }

  /** What stands, whatever is run over it. */
  static String setup(Setup setup) {
    String direction =
        setup.approach() == null ? "" : ", " + entry(new Rung(setup.approach().entry()));
    return setup.poles() + " poles" + runUp(setup.leadIn(), null, null) + direction;
  }

  /** The same of a drill as it was handed out. */
  static String planned(PlannedDrill drill) {
    return drill.poles()
        + " poles"
        + runUp(drill.leadIn(), drill.step(), drill.turn())
        + ", "
        + entry(new Rung(drill.angle()))
        + ", "
        + handling(drill.manoeuvre(), drill.dogSide());
  }

  private static String runUp(
      LeadIn leadIn, @Nullable BackChainStep step, @Nullable JumpTurn turn) {
    return switch (leadIn) {
      case NONE -> "";
      case TUNNEL -> " behind a tunnel";
      case JUMP -> jump(step, turn);
    };
  }

  private static String jump(@Nullable BackChainStep step, @Nullable JumpTurn turn) {
    return switch (step) {
      case null -> " behind a jump";
      case STRAIGHT -> " behind a jump";
      case POLES_ONLY -> ", from where the jump will be";
      case WRAP -> " after a wrap round the jump" + (turn == null ? "" : " to the " + lower(turn));
    };
  }

  static String entry(Rung rung) {
    EntryAngle angle = rung.angle();
    String clock = angle.clock().map(position -> " (" + position + ")").orElse("");
    return switch (rung.side()) {
      case BOTH -> "straight on";
      case POLE -> degrees(angle) + " on the pole side" + clock;
      case GAP -> degrees(angle) + " on the gap side" + clock;
    };
  }

  static String degrees(EntryAngle angle) {
    double size = angle.size();
    return (size == Math.rint(size)
            ? String.valueOf((long) size)
            : String.format(Locale.ROOT, "%.1f", size))
        + "°";
  }

  static String handling(Handling handling) {
    return handling(handling.manoeuvre(), handling.dogSide());
  }

  static String handling(Manoeuvre manoeuvre, @Nullable DogSide side) {
    String dog = side == null ? "" : " with the dog on the " + lower(side);
    return switch (manoeuvre) {
      case ALONGSIDE -> "alongside" + dog;
      case REAR_CROSS -> "rear cross" + dog;
      case FRONT_CROSS -> "front cross" + dog;
      case BLIND_CROSS -> "blind cross" + dog;
      case LATERAL_DISTANCE -> "lateral distance" + dog;
      case RECALL -> "recall" + dog;
      case SEND -> "send" + dog;
      case PRESSURE -> "pressure" + dog;
    };
  }

  static String handlings(List<Handling> handlings) {
    return handlings.stream().map(TrainersWords::handling).collect(Collectors.joining("; "));
  }

  private static String lower(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }
}
