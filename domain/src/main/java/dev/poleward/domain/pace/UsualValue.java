package dev.poleward.domain.pace;

import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.timing.MedianAndMad;
import dev.poleward.domain.timing.MedianLimits;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is usual: a median, how far from it is usual, and where the true one lies.
 *
 * @param of how many values
 * @param limits null where the values are too few for limits that sure
 */
public record UsualValue(int of, double median, double mad, @Nullable MedianLimits limits) {

  static Optional<UsualValue> of(List<Double> values, Confidence confidence) {
    return MedianAndMad.of(values)
        .map(
            usual ->
                new UsualValue(
                    values.size(),
                    usual.median(),
                    usual.mad(),
                    MedianLimits.of(values, confidence).orElse(null)));
  }
}
