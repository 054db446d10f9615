package dev.poleward.service.access;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** What an access key opens. */
public enum Scope {
  RECORDS_WRITE("records:write"),
  RECORDS_READ("records:read"),
  TIMING_PUSH("timing:push"),
  CLUB_MANAGE("club:manage"),
  /** Every club, and everything in it. Only the host key has it; no key of a club can. */
  HOST("host");

  /** All that a key of a club can have. */
  public static final Set<Scope> OF_CLUBS =
      Collections.unmodifiableSet(EnumSet.complementOf(EnumSet.of(HOST)));

  private final String wire;

  Scope(String wire) {
    this.wire = wire;
  }

  /** Its name outside this program. */
  public String wire() {
    return wire;
  }

  /** The scope of that name, if there is one. */
  public static Optional<Scope> ofWire(String name) {
    return Arrays.stream(values()).filter(scope -> scope.wire.equals(name)).findFirst();
  }
}
