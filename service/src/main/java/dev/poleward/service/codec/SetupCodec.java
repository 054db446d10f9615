package dev.poleward.service.codec;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.ClockPosition;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import org.jspecify.annotations.Nullable;

/** Setups and approaches as JSON. */
public final class SetupCodec {

  private SetupCodec() {}

  /** A setup from what was judged to be the contract's {@code Setup}. */
  public static Setup read(ObjectNode setup) {
    return read(new Members(setup));
  }

  static Setup read(Members in) {
    return new Setup(
        in.whole("poles"),
        in.number("spacing"),
        in.choice("leadIn", LeadIn.class),
        in.optionalNumber("leadInDistance"),
        readApproach(in),
        in.optionalNumber("jumpHeight"),
        in.optionalNumber("jumpFacing"),
        in.optionalTexts("aids"));
  }

  /** A setup as the contract's {@code Setup}. */
  public static ObjectNode write(Setup setup) {
    Writing out =
        new Writing()
            .put("poles", setup.poles())
            .put("spacing", setup.spacing())
            .put("leadIn", setup.leadIn())
            .put("leadInDistance", setup.leadInDistance());
    writeApproach(out, setup.approach());
    return out.put("jumpHeight", setup.jumpHeight())
        .put("jumpFacing", setup.jumpFacing())
        .putTexts("aids", setup.aids())
        .done();
  }

  static @Nullable Approach readApproach(Members in) {
    EntryAngle angle = in.optionalAngle("angle");
    ClockPosition clock = in.optionalClock("clock");
    return angle == null && clock == null ? null : new Approach(angle, clock);
  }

  static void writeApproach(Writing out, @Nullable Approach approach) {
    if (approach != null) {
      out.put("angle", approach.angle() == null ? null : approach.angle().degrees())
          .putPrinted("clock", approach.clock());
    }
  }
}
