package dev.poleward.domain.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class MedianAndMadTest {

  /** R's {@code MASS::chem}, printed by Venables and Ripley as 3.385 and .52632 [M]; [R]. */
  @Test
  void theCopperInWholemealFlour() {
    MedianAndMad of =
        MedianAndMad.of(
                List.of(
                    2.9, 3.1, 3.4, 3.4, 3.7, 3.7, 2.8, 2.5, 2.4, 2.4, 2.7, 2.2, 5.28, 3.37, 3.03,
                    3.03, 28.95, 3.77, 3.4, 2.2, 3.5, 3.6, 3.7, 3.7))
            .orElseThrow();

    assertThat(of.median()).isCloseTo(3.385, within(1e-12));
    assertThat(of.mad()).isCloseTo(.355, within(1e-12));
    assertThat(of.deviation()).isCloseTo(.526323, within(0.51e-6));
  }

  /** R's {@code mad(1:9)} [R]. */
  @Test
  void oneToNine() {
    MedianAndMad of = MedianAndMad.of(List.of(9., 1., 8., 2., 7., 3., 6., 4., 5.)).orElseThrow();

    assertThat(of.median()).isEqualTo(5);
    assertThat(of.deviation()).isCloseTo(2.9652, within(1e-12));
  }

  @Test
  void ofOneValueOrOfNone() {
    assertThat(MedianAndMad.of(List.of(3.2))).contains(new MedianAndMad(3.2, 0));
    assertThat(MedianAndMad.of(List.of())).isEmpty();
  }
}
