package dev.poleward.service.render;

import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.Layout;
import dev.poleward.domain.layout.LayoutQuestion;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Layouts of all kinds, plain and awkward ones. */
final class SampleLayouts {

  private SampleLayouts() {}

  static Stream<Layout> all() {
    return Stream.of(
        usual(),
        of(12, LeadIn.JUMP, -75.0, 6.5, 200.0),
        of(4, LeadIn.NONE, null, 5, null),
        of(6, LeadIn.NONE, 165.0, 5, 0.0),
        of(24, LeadIn.TUNNEL, 0.0, 10, 90.0),
        of(24, LeadIn.TUNNEL, -165.0, 50, null),
        of(2, LeadIn.JUMP, 179.0, 0.4, 359.0),
        of(12, LeadIn.JUMP, 165.0, 5, 45.0),
        of(3, LeadIn.TUNNEL, -90.0, 0, null));
  }

  /** Four poles, the tunnel at 1:30. */
  static Layout usual() {
    return of(4, LeadIn.TUNNEL, 45.0, 4.7, 315.0);
  }

  static Layout of(
      int poles,
      LeadIn leadIn,
      @Nullable Double angle,
      double metres,
      @Nullable Double polesRunTowards) {
    Approach approach = angle == null ? null : new Approach(new EntryAngle(angle), null);
    Setup setup = new Setup(poles, 0.6, leadIn, metres, approach, null, null, null);
    return Layout.of(
        new LayoutQuestion(
            setup,
            null,
            null,
            null,
            null,
            null,
            LayoutQuestion.TURNING_RADIUS_USUAL,
            LayoutQuestion.CLEARANCE_USUAL,
            LayoutQuestion.JUMP_WIDTH_USUAL,
            null,
            polesRunTowards));
  }
}
