package dev.poleward.domain.pace;

import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.timing.MedianAndMad;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How evenly a dog weaves.
 *
 * @param spread of the gap times within a run, as a share of its median gap: the distance from it
 *     that is usual, scaled to a standard deviation
 * @param gaps from gap 1-2 on
 */
public record Rhythm(UsualValue spread, List<Gap> gaps) {

  private static final double ERROR = 0.05;

  /**
   * A gap against the others.
   *
   * @param seconds its time
   * @param share its time as a share of the median gap of the same run; 1 is as the others
   * @param slow whether even the lower limit is above 1; the limits are so wide that of all gaps
   *     together none is found slow by chance in 95 of 100 dogs
   */
  public record Gap(int gap, UsualValue seconds, UsualValue share, boolean slow) {}

  /** Of runs over as many gaps each; empty of none with gap times. */
  static Optional<Rhythm> of(List<CleanRun> runs) {
    List<List<Double>> timed = runs.stream().map(CleanRun::gaps).filter(Objects::nonNull).toList();
    List<List<Double>> shares = timed.stream().map(Rhythm::shares).toList();
    return UsualValue.of(shares.stream().map(Rhythm::spread).toList(), Confidence.OF_95_PERCENT)
        .map(spread -> new Rhythm(spread, gaps(timed, shares)));
  }

  private static List<Double> shares(List<Double> gaps) {
    double median = MedianAndMad.of(gaps).orElseThrow().median();
    return gaps.stream().map(gap -> gap / median).toList();
  }

  private static double spread(List<Double> shares) {
    return MedianAndMad.of(shares).orElseThrow().deviation();
  }

  private static List<Gap> gaps(List<List<Double>> timed, List<List<Double>> shares) {
    int count = shares.getFirst().size();
    Confidence confidence = Confidence.of(1 - ERROR / count);
    List<Gap> gaps = new ArrayList<>(count);
    for (int gap : IntStream.range(0, count).toArray()) {
      UsualValue share = usual(shares, gap, confidence);
      gaps.add(
          new Gap(
              gap + 1,
              usual(timed, gap, confidence),
              share,
              share.limits() != null && share.limits().lower() > 1));
    }
    return List.copyOf(gaps);
  }

  private static UsualValue usual(List<List<Double>> runs, int gap, Confidence confidence) {
    return UsualValue.of(runs.stream().map(run -> run.get(gap)).toList(), confidence).orElseThrow();
  }
}
