package dev.poleward.service.access;

/** Whose access key came with a request, if anybody's. */
public sealed interface Authentication {

  /** A key that opens something. */
  sealed interface Identity extends Authentication permits HostIdentity, ClubIdentity {}

  /**
   * No such key, a wrong secret, or a revoked key: nobody is told which.
   *
   * <p>Where the club does not exist, the answer is the same.
   */
  record Unknown() implements Authentication {}

  /** The text has not the form of an access key. */
  record Malformed() implements Authentication {}

  /**
   * The key is not known here, and this node could not learn in time whether it is known elsewhere.
   */
  record Undecided() implements Authentication {}
}
