package dev.poleward.service.access;

import dev.poleward.domain.event.ClubEvent.AccessKeyIssued;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A wish for an access key.
 *
 * @param key its id; one is drawn when absent
 * @param dogs the only dogs it is to open; all when absent
 */
public record KeyRequest(
    @Nullable String key, Set<Scope> scopes, @Nullable Set<String> dogs, @Nullable String label) {

  /** Keeps the sets from changing. */
  public KeyRequest {
    scopes = Set.copyOf(scopes);
    dogs = dogs == null ? null : Set.copyOf(dogs);
  }

  /** A club's first key: everything that a key of a club can open. */
  public static KeyRequest first() {
    return new KeyRequest(null, Scope.OF_CLUBS, null, null);
  }

  /**
   * Whether {@code issued} is what such a wish leads to, whatever its secret: how to tell a wish
   * that comes again from another one under its event's id.
   */
  public boolean ledTo(AccessKeyIssued issued) {
    return equals(
        new KeyRequest(
            key == null ? null : issued.key(),
            scopesOf(issued),
            issued.dogs() == null ? null : Set.copyOf(issued.dogs()),
            issued.label()));
  }

  /** Scopes of a key; names that this version does not know open nothing. */
  static Set<Scope> scopesOf(AccessKeyIssued issued) {
    Set<Scope> scopes = new TreeSet<>();
    for (String name : issued.scopes()) {
      Scope.ofWire(name).filter(Scope.OF_CLUBS::contains).ifPresent(scopes::add);
    }
    return scopes;
  }

  /** Scopes by name, in the order in which they are declared. */
  List<String> scopeNames() {
    return new TreeSet<>(scopes).stream().map(Scope::wire).toList();
  }

  /** Dogs in ascending order, if the key is narrowed. */
  @Nullable List<String> sortedDogs() {
    return dogs == null ? null : List.copyOf(new TreeSet<>(dogs));
  }
}
