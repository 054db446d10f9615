package dev.poleward.service.render;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CountedTest {

  @ParameterizedTest
  @CsvSource({"0, 0 reps", "1, 1 rep", "2, 2 reps", "101, 101 reps"})
  void oneIsSingular(long count, String words) {
    assertThat(Counted.of(count, "rep")).isEqualTo(words);
  }
}
