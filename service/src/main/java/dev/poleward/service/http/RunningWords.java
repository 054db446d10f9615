package dev.poleward.service.http;

import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.programme.Rung;
import dev.poleward.domain.running.RunningOrder;
import dev.poleward.domain.running.RunningOrder.LeftOut;
import dev.poleward.domain.running.RunningOrder.Naive;
import dev.poleward.domain.running.RunningOrder.Reached;
import dev.poleward.domain.running.RunningOrder.Standing;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.function.IntFunction;

/** What trainers say of running orders. Times of day are the club's. */
final class RunningWords {

  private static final DateTimeFormatter TIME_OF_DAY =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter TO_THE_SECOND =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
  private static final int SECONDS_IN_A_MINUTE = 60;

  private final ZoneId zone;
  private final IntFunction<Instant> times;

  /**
   * @param times from seconds after the beginning
   */
  RunningWords(ZoneId zone, IntFunction<Instant> times) {
    this.zone = zone;
    this.times = times;
  }

  String order(RunningOrder order) {
    int turns =
        order.poleSets().stream()
            .flatMap(poleSet -> poleSet.standings().stream())
            .mapToInt(standing -> standing.turns().size())
            .sum();
    return turns == 0
        ? "Nobody runs."
        : "%s until %s; %s; %s."
            .formatted(
                turns == 1 ? "1 turn" : turns + " turns",
                at(order.ends()),
                carried(order.carried()),
                waited(order.waited()));
  }

  private static String carried(Reached carried) {
    String metres = metres(carried.amount()) + " carried";
    return carried.isLeast()
        ? metres + ", the least there is"
        : metres + ", no order carries less than " + metres(carried.atLeast());
  }

  private static String waited(Reached waited) {
    if (waited.amount() == 0) {
      return "no pole set waits";
    }
    String minutes = "pole sets wait " + minutes(waited.amount());
    return waited.isLeast()
        ? minutes + ", the least there is"
        : minutes + ", no such order waits less than " + minutes(waited.atLeast());
  }

  String naive(Naive naive) {
    return "In the order given, each dog its drills in turn, it would be %s carried and %s of waiting, until %s."
        .formatted(metres(naive.metres()), minutes(naive.waited()), at(naive.ends()));
  }

  String standing(Standing standing) {
    String setup = setup(standing.setup());
    return standing.metres() == 0 && standing.ready() == 0
        ? setup + ": stands already."
        : "%s: %s to carry, stands from %s."
            .formatted(setup, metres(standing.metres()), at(standing.ready()));
  }

  /** {@code 4 poles behind a tunnel, 45° on the pole side (1:30)}. */
  static String setup(Setup setup) {
    String poles = setup.poles() + " poles";
    String behind =
        switch (setup.leadIn()) {
          case NONE -> "";
          case JUMP -> " behind a jump";
          case TUNNEL -> " behind a tunnel";
        };
    return setup.leadIn() == LeadIn.NONE || setup.approach() == null
        ? poles + behind
        : poles + behind + ", " + TrainersWords.entry(new Rung(setup.approach().entry()));
  }

  static String leftOut(String callName, LeftOut.Reason why, int turns) {
    String of = turns == 1 ? "a turn of " + callName : turns + " turns of " + callName;
    return switch (why) {
      case TIME_IS_UP -> "No time is left for " + of + ": dogs that have had fewer come first.";
      case RESTS_TOO_LONG ->
          "No time is left for "
              + of
              + ": with the rests between them they take longer than there is.";
    };
  }

  static String stopped(String callName) {
    return callName + " may not train: its notes say why.";
  }

  static String nothing(String callName) {
    return "There is nothing for " + callName + " to run.";
  }

  private String at(int seconds) {
    return (seconds % SECONDS_IN_A_MINUTE == 0 ? TIME_OF_DAY : TO_THE_SECOND)
        .format(times.apply(seconds).atZone(zone));
  }

  private static String metres(double metres) {
    return String.format(Locale.ROOT, "%.1f m", metres);
  }

  private static String minutes(double seconds) {
    double minutes = seconds / SECONDS_IN_A_MINUTE;
    return minutes == Math.rint(minutes)
        ? "%d min".formatted((long) minutes)
        : String.format(Locale.ROOT, "%.1f min", minutes);
  }
}
