package dev.poleward.service.access;

import dev.poleward.service.access.Authentication.Identity;
import java.util.Collections;
import java.util.Set;

/** Whether somebody may do something in a club. */
public sealed interface Permission {

  /** Yes. */
  record Granted() implements Permission {}

  /** The key is of another club: to be answered as if this club did not exist. */
  record OtherClub() implements Permission {}

  /** The key has none of the scopes that suffice. */
  record ScopeMissing(Set<Scope> anyOf) implements Permission {}

  /** What it takes to look at a club's records. */
  static Permission toRead(Identity identity, String club) {
    return of(identity, club, Set.of(Scope.RECORDS_READ));
  }

  /** Whether {@code identity} has one of {@code anyOf} in that club. */
  static Permission of(Identity identity, String club, Set<Scope> anyOf) {
    return switch (identity) {
      case HostIdentity _ -> new Granted();
      case ClubIdentity key when !key.club().equals(club) -> new OtherClub();
      case ClubIdentity key when Collections.disjoint(key.scopes(), anyOf) ->
          new ScopeMissing(anyOf);
      case ClubIdentity _ -> new Granted();
    };
  }

  /** Whether {@code identity} may do what only the host may, such as register a club. */
  static boolean asHost(Identity identity) {
    return identity instanceof HostIdentity;
  }

  /** Whether {@code identity}, permitted in a club, may see and write that dog there. */
  static boolean mayTouch(Identity identity, String dog) {
    return switch (identity) {
      case HostIdentity _ -> true;
      case ClubIdentity key -> key.dogs().map(dogs -> dogs.contains(dog)).orElse(true);
    };
  }

  /**
   * Whether {@code identity}, permitted in a club, may touch all its dogs, so that what speaks of
   * the whole club may be shown.
   */
  static boolean mayTouchEveryDog(Identity identity) {
    return switch (identity) {
      case HostIdentity _ -> true;
      case ClubIdentity key -> key.dogs().isEmpty();
    };
  }
}
