package dev.poleward.domain.judgement;

import java.util.List;
import java.util.function.ToIntFunction;

/**
 * The log likelihood of a beta-binomial distribution over the logs of its two parameters, as sums
 * over reps (Smith 1983, Applied Statistics 32:196, algorithm AS 189): how many dogs had more than
 * so many clean, missed or any, is all that counts.
 */
final class BetaBinomialHill implements Hill {

  /** Logs of the parameters; far beyond what {@link BetaPrior} lets them be. */
  private static final double FARTHEST = 12;

  private final int[] cleanAbove;
  private final int[] missedAbove;
  private final int[] anyAbove;
  private final double logOfWays;

  BetaBinomialHill(List<Tally> dogs) {
    cleanAbove = above(dogs, Tally::clean);
    missedAbove = above(dogs, Tally::missed);
    anyAbove = above(dogs, Tally::of);
    double ways = 0;
    for (Tally dog : dogs) {
      for (int i = 1; i <= dog.missed(); i++) {
        ways += StrictMath.log((double) (dog.clean() + i) / i);
      }
    }
    logOfWays = ways;
  }

  /** For each number from 0 on, how many dogs had more. */
  private static int[] above(List<Tally> dogs, ToIntFunction<Tally> number) {
    int[] above = new int[dogs.stream().mapToInt(number).max().orElse(0)];
    for (Tally dog : dogs) {
      for (int i = 0; i < number.applyAsInt(dog); i++) {
        above[i]++;
      }
    }
    return above;
  }

  /** The likeliest parameters, as large as a {@link BetaPrior} may be. */
  BetaPrior top(BetaPrior start) {
    Place top =
        Climb.from(this, StrictMath.log(start.clean()), StrictMath.log(start.missed()), FARTHEST);
    double clean = StrictMath.exp(top.x());
    double missed = StrictMath.exp(top.y());
    return BetaPrior.of(clean / (clean + missed), clean + missed);
  }

  @Override
  public Place at(double x, double y) {
    double a = StrictMath.exp(x);
    double b = StrictMath.exp(y);
    Sums clean = Sums.of(cleanAbove, a);
    Sums missed = Sums.of(missedAbove, b);
    Sums any = Sums.of(anyAbove, a + b);
    double byA = clean.inverses - any.inverses;
    double byB = missed.inverses - any.inverses;
    return new Place(
        x,
        y,
        logOfWays + clean.logs + missed.logs - any.logs,
        a * byA,
        b * byB,
        a * byA + a * a * (any.squares - clean.squares),
        a * b * any.squares,
        b * byB + b * b * (any.squares - missed.squares));
  }

  /** Sums of log(c + i), 1/(c + i) and 1/(c + i)² over the reps i from 0. */
  private record Sums(double logs, double inverses, double squares) {

    static Sums of(int[] above, double parameter) {
      double logs = 0;
      double inverses = 0;
      double squares = 0;
      for (int i = 0; i < above.length; i++) {
        double inverse = 1 / (parameter + i);
        logs += above[i] * StrictMath.log(parameter + i);
        inverses += above[i] * inverse;
        squares += above[i] * inverse * inverse;
      }
      return new Sums(logs, inverses, squares);
    }
  }
}
