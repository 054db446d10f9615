package dev.poleward.domain.care;

import dev.poleward.domain.event.Stride;
import dev.poleward.domain.pace.Slowing;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Looks for signs in the last days of a record, against what was usual before. All are [C]. */
final class Signs {

  private static final int LATELY_DAYS = 14;
  private static final int LAST = 10;
  private static final int BEFORE_MIN = 10;
  private static final int BEFORE_MAX = 50;

  private static final int HOPS_MIN = 3;
  private static final double HOPPED_BEFORE_MAX = 0.1;
  private static final int DRIVES_MIN = 8;
  private static final double DRIVE_LOST = 0.75;
  private static final int SLIPS_MIN = 2;

  private Signs() {}

  /**
   * The signs that stand.
   *
   * @param cleared when somebody last looked at the dog; nothing before counts as a sign
   */
  static Set<Sign> of(Trained trained, @Nullable Instant cleared, CareQuestion question) {
    Instant end = question.end();
    Instant lately = question.beginOfLast(LATELY_DAYS);
    Instant from = cleared == null || cleared.isBefore(lately) ? lately : cleared;
    List<PlacedRep> past =
        trained.reps().stream().filter(rep -> rep.moment().time().isBefore(end)).toList();
    Set<Sign> signs = EnumSet.noneOf(Sign.class);
    if (hops(Seen.of(past, rep -> hop(rep.details().stride()), from))) {
      signs.add(Sign.HOPPING);
    }
    if (losesDrive(Seen.of(past, rep -> drive(rep.details().drive()), from))) {
      signs.add(Sign.LESS_KEEN);
    }
    Slowing slowing = Slowing.of(trained.timed(), cleared, end, question.zone());
    if (slowing.verdict() == Slowing.Verdict.SLOWER) {
      signs.add(Sign.SLOWING);
    }
    if (trained.slips().stream().filter(slip -> !slip.isBefore(from) && slip.isBefore(end)).count()
        >= SLIPS_MIN) {
      signs.add(Sign.SLIPPING);
    }
    return signs;
  }

  private static @Nullable Double hop(@Nullable Stride stride) {
    return stride == null ? null : stride == Stride.HOP ? 1.0 : 0.0;
  }

  private static @Nullable Double drive(@Nullable Integer drive) {
    return drive == null ? null : drive.doubleValue();
  }

  private static boolean hops(Seen hops) {
    return sum(hops.last()) >= HOPS_MIN
        && hops.before().size() >= BEFORE_MIN
        && mean(hops.before()) <= HOPPED_BEFORE_MAX;
  }

  private static boolean losesDrive(Seen drives) {
    return drives.last().size() >= DRIVES_MIN
        && drives.before().size() >= BEFORE_MIN
        && mean(drives.last()) <= mean(drives.before()) - DRIVE_LOST;
  }

  private static double sum(List<Double> numbers) {
    return numbers.stream().mapToDouble(Double::doubleValue).sum();
  }

  private static double mean(List<Double> numbers) {
    return sum(numbers) / numbers.size();
  }

  /** Numbers of the last reps, where they are known, and of those before. */
  private record Seen(List<Double> last, List<Double> before) {

    static Seen of(
        List<PlacedRep> reps, Function<PlacedRep, @Nullable Double> number, Instant from) {
      List<PlacedRep> known = reps.stream().filter(rep -> number.apply(rep) != null).toList();
      int recent = (int) known.stream().filter(rep -> !rep.moment().time().isBefore(from)).count();
      int first = known.size() - Math.min(LAST, recent);
      return new Seen(
          numbers(known.subList(first, known.size()), number),
          numbers(known.subList(Math.max(0, first - BEFORE_MAX), first), number));
    }

    private static List<Double> numbers(
        List<PlacedRep> reps, Function<PlacedRep, @Nullable Double> number) {
      return reps.stream().map(rep -> Objects.requireNonNull(number.apply(rep))).toList();
    }
  }
}
