package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.outlook.Quantiles;
import dev.poleward.domain.outlook.Rhythm;
import java.time.Duration;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sessions are two a week; none (0) is beyond the horizon. */
class OutlookWordsTest {

  private static final Duration FOUR_YEARS = Duration.ofDays(4 * 365);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "6 | 10 | 18 | one finishes within 3 weeks, five within 5 and nine within 9",
        "6 | 6 | 8 | five finish within 3 weeks and nine within 4",
        "6 | 8 | 8 | one finishes within 3 weeks and nine within 4",
        "1 | 2 | 2 | nine finish within 1 week",
        "5 | 9 | 0 | one finishes within 3 weeks, five within 5 and fewer than nine within 4 years",
        "5 | 0 | 0 | one finishes within 3 weeks and fewer than five within 4 years",
        "0 | 0 | 0 | fewer than one finishes within 4 years"
      })
  void saysWhoFinishesWhen(int early, int middle, int late, String words) {
    assertThat(OutlookWords.finish(new Rhythm(2, 9), FOUR_YEARS, quantiles(early, middle, late)))
        .isEqualTo(words);
  }

  @Test
  void equalNumbersOfWeeksAreToldOnce() {
    assertThat(OutlookWords.finish(new Rhythm(2, 9), FOUR_YEARS, quantiles(5, 6, 7)))
        .isEqualTo("five finish within 3 weeks and nine within 4");
  }

  private static Quantiles quantiles(int early, int middle, int late) {
    return new Quantiles(sessions(early), sessions(middle), sessions(late));
  }

  private static OptionalInt sessions(int sessions) {
    return sessions == 0 ? OptionalInt.empty() : OptionalInt.of(sessions);
  }
}
