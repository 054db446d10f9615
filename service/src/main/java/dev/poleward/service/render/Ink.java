package dev.poleward.service.render;

import java.util.Locale;

/**
 * The colours of every picture. What is written or drawn thin keeps a contrast of at least 4.5 to 1
 * against the paper (WCAG 2.2, 1.4.3), so that it can be read in the sun and in grey. Blue and
 * orange stay apart for the colour-blind; they never stand alone, a shape or a stroke goes with
 * each.
 */
enum Ink {
  PAPER(0xFFFFFF),
  /** Text, axes, thresholds. */
  BLACK(0x111111),
  /** Words that explain. */
  QUIET(0x4A4A4A),
  /** What is beside the point, as the model-free steps. */
  FAINT(0x6E6E6E),
  /** Lines that only guide the eye. */
  GRID(0xC9C9C9),
  /** Entry side pole. */
  BLUE(0x0B4A94),
  /** Its band. */
  PALE_BLUE(0xCBDDF3),
  /** Entry side gap. */
  ORANGE(0xA63C00),
  /** Its band. */
  PALE_ORANGE(0xFADCC4);

  private final int rgb;

  Ink(int rgb) {
    this.rgb = rgb;
  }

  /** Red, green and blue, eight bits each. */
  int rgb() {
    return rgb;
  }

  /** As SVG writes it. */
  String hex() {
    return String.format(Locale.ROOT, "#%06X", rgb);
  }
}
