package dev.poleward.domain.outlook;

import dev.poleward.domain.layout.ClockPosition;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.record.PlacedRep;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A drill as homework describes it: what is left out is left open. A rep fits when all that is said
 * is so; its angle may differ by {@value #TOLERANCE_DEGREES} degrees, on the same entry side.
 * Spacing, distance and words are not looked at.
 */
final class AskedDrill {

  /** As in programmes that do not say another [C]. */
  static final double TOLERANCE_DEGREES = 5;

  private final Map<String, Object> asked;
  private final @Nullable EntryAngle angle;

  private AskedDrill(Map<String, Object> asked, @Nullable EntryAngle angle) {
    this.asked = asked;
    this.angle = angle;
  }

  /** Reads what an event says; what is in no order there is left open. */
  static AskedDrill of(Map<String, Object> asked) {
    return new AskedDrill(asked, angle(asked));
  }

  private static @Nullable EntryAngle angle(Map<String, Object> asked) {
    if (asked.get("angle") instanceof Number degrees
        && EntryAngle.isAllowed(degrees.doubleValue())) {
      return new EntryAngle(degrees.doubleValue());
    }
    return asked.get("clock") instanceof String clock
        ? ClockPosition.read(clock).map(ClockPosition::angle).orElse(null)
        : null;
  }

  /** How often it is to be run. */
  int reps() {
    return asked.get("reps") instanceof Number reps ? Math.max(1, reps.intValue()) : 1;
  }

  boolean fits(PlacedRep rep) {
    Setup setup = rep.setup();
    return isSo("poles", setup == null ? null : setup.poles())
        && isSo("leadIn", setup == null ? null : setup.leadIn())
        && isSo("manoeuvre", rep.manoeuvre())
        && isSo("dogSide", rep.details().dogSide())
        && isSo("backChainStep", rep.details().backChainStep())
        && isSo("jumpTurn", rep.details().jumpTurn())
        && (angle == null || isNear(angle, rep.angle()));
  }

  private boolean isSo(String member, @Nullable Object run) {
    Object said = asked.get(member);
    return switch (said) {
      case null -> true;
      case Number number -> run instanceof Integer is && is == number.intValue();
      case String text -> run instanceof Enum<?> is && wireName(is).equals(text);
      default -> true;
    };
  }

  private static String wireName(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static boolean isNear(EntryAngle asked, @Nullable EntryAngle run) {
    return run != null
        && Math.abs(asked.degrees() - run.degrees()) <= TOLERANCE_DEGREES
        && (asked.degrees() == 0 || asked.side() == run.side());
  }
}
