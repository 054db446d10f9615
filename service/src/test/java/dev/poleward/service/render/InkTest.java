package dev.poleward.service.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Colours can be read in the sun, in grey and by the colour-blind. Contrast as WCAG 2.2 defines it
 * [S: W3C, Web Content Accessibility Guidelines 2.2, "contrast ratio" and "relative luminance"].
 */
class InkTest {

  /** 1.4.3, for text of usual size. */
  private static final double TEXT_MIN = 4.5;

  private static final Set<Ink> UNDERLYING =
      EnumSet.of(Ink.PAPER, Ink.GRID, Ink.PALE_BLUE, Ink.PALE_ORANGE);

  /** The ends of the scale are exact [S: the same]. */
  @Test
  void contrastIsMeasuredAsDefined() {
    assertThat(contrast(0x000000, 0xFFFFFF)).isEqualTo(21);
    assertThat(contrast(0x777777, 0x777777)).isEqualTo(1);
  }

  @ParameterizedTest
  @EnumSource
  void whatIsWrittenOrDrawnStandsOutFromThePaper(Ink ink) {
    if (!UNDERLYING.contains(ink)) {
      assertThat(contrast(ink.rgb(), Ink.PAPER.rgb())).as("%s", ink).isGreaterThan(TEXT_MIN);
    }
  }

  @Test
  void aCurveStandsOutFromItsBandAndAThresholdFromBoth() {
    assertThat(contrast(Ink.BLUE.rgb(), Ink.PALE_BLUE.rgb())).isGreaterThan(TEXT_MIN);
    assertThat(contrast(Ink.ORANGE.rgb(), Ink.PALE_ORANGE.rgb())).isGreaterThan(TEXT_MIN);
    assertThat(contrast(Ink.BLACK.rgb(), Ink.PALE_BLUE.rgb())).isGreaterThan(TEXT_MIN);
    assertThat(contrast(Ink.BLACK.rgb(), Ink.PALE_ORANGE.rgb())).isGreaterThan(TEXT_MIN);
  }

  /** In grey the two sides look alike, so shapes and strokes must tell them apart. */
  @Test
  void sidesDifferInMoreThanColour() {
    assertThat(SideStyle.POLE.curve()).isNotEqualTo(SideStyle.GAP.curve());
    assertThat(SideStyle.POLE.marker(0, 0, 10).contains(7, 7)).isTrue();
    assertThat(SideStyle.GAP.marker(0, 0, 10).contains(7, 7)).isFalse();
  }

  private static double contrast(int one, int other) {
    double lighter = Math.max(luminance(one), luminance(other));
    double darker = Math.min(luminance(one), luminance(other));
    return (lighter + 0.05) / (darker + 0.05);
  }

  private static double luminance(int rgb) {
    return 0.2126 * linear(rgb >> 16 & 0xFF)
        + 0.7152 * linear(rgb >> 8 & 0xFF)
        + 0.0722 * linear(rgb & 0xFF);
  }

  private static double linear(int eightBits) {
    double share = eightBits / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
