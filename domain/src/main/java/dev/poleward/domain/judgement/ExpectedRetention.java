package dev.poleward.domain.judgement;

import java.time.Instant;

/** What is expected of how a dog forgets, before its own returns are looked at. */
@FunctionalInterface
public interface ExpectedRetention {

  /** Of any dog the same, where no club is known. */
  ExpectedRetention USUAL = (_, _) -> ClubRetention.UNKNOWN;

  /**
   * What is expected of a dog.
   *
   * @param dog under whichever of its registrations
   * @param agedTo until when days without practice are counted
   */
  ClubRetention of(String dog, Instant agedTo);
}
