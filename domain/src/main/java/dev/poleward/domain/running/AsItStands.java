package dev.poleward.domain.running;

import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import org.jspecify.annotations.Nullable;

/**
 * A setup as far as it stands on the ground: poles alone stand alike wherever the dog starts, and
 * an angle and its clock position are one place.
 */
public final class AsItStands {

  private AsItStands() {}

  /** Equal for setups that stand alike. */
  public static Setup of(Setup setup) {
    boolean bare = setup.leadIn() == LeadIn.NONE;
    return new Setup(
        setup.poles(),
        setup.spacing(),
        setup.leadIn(),
        bare ? null : setup.leadInDistance(),
        bare ? null : approach(setup.approach()),
        setup.leadIn() == LeadIn.JUMP ? setup.jumpHeight() : null,
        setup.leadIn() == LeadIn.JUMP ? setup.jumpFacing() : null,
        setup.aids() == null || setup.aids().isEmpty() ? null : setup.aids());
  }

  private static @Nullable Approach approach(@Nullable Approach said) {
    return said == null ? null : new Approach(said.entry().asLaidOut(), null);
  }
}
