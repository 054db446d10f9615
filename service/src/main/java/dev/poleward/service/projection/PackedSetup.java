package dev.poleward.service.projection;

import dev.poleward.domain.event.SessionEvent.SetupChanged;
import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.ClockPosition;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What stands, and where the dog comes from, in a row, member by member. */
final class PackedSetup {

  /** Stands for what was not said, where something else might stand. */
  private static final int ABSENT = 0;

  private static final int PRESENT = 1;

  private PackedSetup() {}

  static void put(RowOutput out, SetupChanged changed) {
    out.text(changed.session()).text(changed.poleSet());
    putSetup(out, changed.setup());
  }

  static SetupChanged read(RowInput in) {
    String session = in.text();
    String poleSet = in.optionalText();
    Setup setup = readSetup(in);
    if (setup == null) {
      throw new IllegalStateException("a row lacks the setup that it is about");
    }
    return new SetupChanged(session, setup, poleSet);
  }

  static void putSetup(RowOutput out, @Nullable Setup setup) {
    if (setup == null) {
      out.octet(ABSENT);
      return;
    }
    out.octet(PRESENT)
        .small(setup.poles())
        .real(setup.spacing())
        .word(setup.leadIn())
        .real(setup.leadInDistance())
        .real(setup.jumpHeight())
        .real(setup.jumpFacing())
        .list(setup.aids(), RowOutput::text);
    putApproach(out, setup.approach());
  }

  static @Nullable Setup readSetup(RowInput in) {
    if (in.octet() == ABSENT) {
      return null;
    }
    int poles = in.small();
    double spacing = in.real();
    LeadIn leadIn = in.word(Words.LEAD_INS);
    Double leadInDistance = in.optionalReal();
    Double jumpHeight = in.optionalReal();
    Double jumpFacing = in.optionalReal();
    List<String> aids = in.optionalList(RowInput::text);
    return new Setup(
        poles, spacing, leadIn, leadInDistance, readApproach(in), jumpHeight, jumpFacing, aids);
  }

  static void putApproach(RowOutput out, @Nullable Approach approach) {
    if (approach == null) {
      out.octet(ABSENT);
      return;
    }
    EntryAngle angle = approach.angle();
    out.octet(PRESENT).real(angle == null ? null : angle.degrees());
    ClockPosition clock = approach.clock();
    out.small(clock == null ? null : 2 * clock.hour() + (clock.half() ? 1 : 0));
  }

  static @Nullable Approach readApproach(RowInput in) {
    if (in.octet() == ABSENT) {
      return null;
    }
    Double degrees = in.optionalReal();
    Integer halfHours = in.optionalSmall();
    return new Approach(
        degrees == null ? null : new EntryAngle(degrees),
        halfHours == null ? null : new ClockPosition(halfHours / 2, halfHours % 2 == 1));
  }
}
