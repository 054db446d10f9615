package dev.poleward.service.http;

import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.mastery.SideComparison;
import dev.poleward.domain.mastery.SideComparison.Apart;
import dev.poleward.domain.report.AtHome;
import dev.poleward.domain.report.DogPage;
import dev.poleward.domain.report.NotKnown;
import dev.poleward.domain.report.StuckOn;
import dev.poleward.service.render.Counted;
import java.util.Locale;

/** What a report says in whole sentences. */
final class ReportWords {

  private ReportWords() {}

  static String sides(SideComparison sides) {
    return switch (sides) {
      case SideComparison.Lags(EntrySide side, Apart behind) ->
          behind == null
              ? "The %s side is behind: its upper limit lies below the lower one of the other side."
                  .formatted(name(side))
              : "The %s side is %s behind (%s)."
                  .formatted(name(side), degrees(behind.degrees()), limits(behind));
      case SideComparison.Alike _ ->
          "Both sides are alike: surely less than %s apart."
              .formatted(degrees(SideComparison.ALIKE_DEGREES));
      case SideComparison.CannotTell(SideComparison.Why why, Apart difference) ->
          cannotTell(why) + (difference == null ? "" : " " + soFar(difference));
    };
  }

  private static String soFar(Apart difference) {
    boolean gapBehind = difference.degrees() > 0;
    Apart behind = gapBehind ? difference : difference.reversed();
    return "So far the %s side looks %s behind (%s)."
        .formatted(
            name(gapBehind ? EntrySide.GAP : EntrySide.POLE),
            degrees(behind.degrees()),
            limits(behind));
  }

  private static String limits(Apart behind) {
    if (behind.lower() == null) {
      return behind.upper() == null ? "no limits" : "at most " + degrees(behind.upper());
    }
    return behind.upper() == null
        ? "at least " + degrees(behind.lower())
        : degrees(behind.lower()) + " to " + degrees(behind.upper());
  }

  private static String cannotTell(SideComparison.Why why) {
    return switch (why) {
      case NOT_ENOUGH_REPS -> "Cannot tell: one side, or both, have not enough reps.";
      case NO_FALL -> "Cannot tell: larger angles are not made less often on a side.";
      case OUTSIDE_TRIED -> "Cannot tell: a threshold lies outside the angles tried.";
      case LIMITS_TOO_WIDE -> "Cannot tell: the limits are too wide.";
    };
  }

  private static String name(EntrySide side) {
    return side.name().toLowerCase(Locale.ROOT);
  }

  private static String degrees(double degrees) {
    return Math.round(degrees) + "°";
  }

  static String atHome(AtHome atHome) {
    return switch (atHome) {
      case AtHome.Rest _ -> "The dog rests: no poles.";
      case AtHome.Homeworks _ -> "What was set, as far as it is not done.";
      case AtHome.Proposed it when it.refresh().isEmpty() && it.next().isEmpty() ->
          it.heldBack() == 0
              ? "Nothing slips or is due, and nothing is left to learn."
              : "Nothing that age and health allow is due or next.";
      case AtHome.Proposed _ ->
          "Nothing was set: what slips or is due first, then what is next, within what age and"
              + " health allow.";
    };
  }

  static String stuckOn(StuckOn on) {
    return "%s, %s: stuck are %d of the %d dogs that worked on it."
        .formatted(
            TrainersWords.setup(on.pool()),
            TrainersWords.entry(on.pool().rung()),
            on.stuck().size(),
            on.worked());
  }

  /** Of a dog's page. */
  static String ofDog(NotKnown notKnown) {
    int count = notKnown.count();
    return switch (notKnown.matter()) {
      case REPS -> "It has no reps in these days.";
      case FEW_REPS ->
          "Only %s without help in these days: %d or more say more."
              .formatted(Counted.of(count, "rep"), DogPage.REPS_FEW);
      case AGE ->
          "Nobody said when it was born: care takes it for a young dog until it is cleared.";
      case PROGRAMME -> "No programme was assigned: the default one is followed.";
      case READABLE_PROGRAMME ->
          "Its programme has a document with faults: the one before stays in use.";
      case SETUP_OF_REPS -> "What stood is not known of %s.".formatted(Counted.of(count, "rep"));
      case ANGLE_OF_REPS ->
          "Where it came from is not known of %s.".formatted(Counted.of(count, "rep"));
      case DRILL_OF_REPS ->
          "%s of no drill of the programme: for curves alone.".formatted(Counted.of(count, "rep"));
      case POLE_OF_FAULTS ->
          "At which pole is not known of %s.".formatted(Counted.of(count, "fault"));
      case REWARDS -> "Nothing was told of its rewards.";
      case ATTENDANCE ->
          "Whether it was there is not known of %s.".formatted(Counted.of(count, "session"));
      case CONTRADICTED_ATTENDANCE ->
          "Noted to be away in %s in which it has reps: it was there."
              .formatted(Counted.of(count, "session"));
      case SESSIONS, MEMBERS, SETUP_OF_SESSIONS, EQUIPMENT_TIME -> ofClass(notKnown);
    };
  }

  /** Of the page of a class. */
  static String ofClass(NotKnown notKnown) {
    int count = notKnown.count();
    return switch (notKnown.matter()) {
      case SESSIONS -> "The class had no session in these days.";
      case MEMBERS -> "The class had no members in these days.";
      case REPS -> "%s without reps in these days.".formatted(Counted.of(count, "dog"));
      case ATTENDANCE ->
          "Whether a member was there is not known %s.".formatted(Counted.of(count, "time"));
      case CONTRADICTED_ATTENDANCE ->
          "Noted to be away %s by mistake: the dog has reps.".formatted(Counted.of(count, "time"));
      case SETUP_OF_SESSIONS ->
          "What stood is not known of %s.".formatted(Counted.of(count, "session"));
      case EQUIPMENT_TIME ->
          "How long it stood is not known of %s.".formatted(Counted.of(count, "setup"));
      case FEW_REPS,
          AGE,
          PROGRAMME,
          READABLE_PROGRAMME,
          SETUP_OF_REPS,
          ANGLE_OF_REPS,
          DRILL_OF_REPS,
          POLE_OF_FAULTS,
          REWARDS ->
          ofDog(notKnown);
    };
  }
}
