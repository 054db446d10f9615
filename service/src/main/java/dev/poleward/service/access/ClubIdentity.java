package dev.poleward.service.access;

import java.util.Optional;
import java.util.Set;

/**
 * The holder of a key of one club.
 *
 * @param key the key's id
 * @param dogs the only dogs it may see and write; all when absent
 */
public record ClubIdentity(String club, String key, Set<Scope> scopes, Optional<Set<String>> dogs)
    implements Authentication.Identity {

  /** Keeps the sets from changing. */
  public ClubIdentity {
    scopes = Set.copyOf(scopes);
    dogs = dogs.map(Set::copyOf);
  }
}
