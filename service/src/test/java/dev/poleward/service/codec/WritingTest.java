package dev.poleward.service.codec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WritingTest {

  /** JSON has no such numbers (RFC 8259, 6): as text they would reach a caller who counts. */
  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNoNumberOfJsonIsRefused(double value) {
    Writing writing = new Writing();

    assertThatThrownBy(() -> writing.put("angle", value))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("angle");
  }

  @Test
  void aWholeNumberHasNoFraction() {
    assertThat(new Writing().put("angle", 60.0).put("share", 0.5).done().toString())
        .isEqualTo("{\"angle\":60,\"share\":0.5}");
  }
}
