package dev.poleward.service.access;

import java.util.EnumSet;
import java.util.Set;

/** What it takes to send an event of a type through the event door. */
public sealed interface ScopeOfType {

  /** Any one of these scopes suffices. */
  record AnyOf(Set<Scope> scopes) implements ScopeOfType {}

  /**
   * No scope opens the event door to this type: the service writes it itself.
   *
   * @param route the request that makes it
   */
  record MadeBy(String route) implements ScopeOfType {}

  /** What it takes to send that type, such as {@code rep.logged.v1}. */
  static ScopeOfType of(String type) {
    return switch (type) {
      case "club.registered.v1" -> new MadeBy("POST /v1/clubs");
      case "access-key.issued.v1" -> new MadeBy("POST /v1/clubs/{club}/access-keys");
      case "access-key.revoked.v1" -> new MadeBy("DELETE /v1/clubs/{club}/access-keys/{key}");
      case "person.forgotten.v1" ->
          new MadeBy("DELETE /v1/clubs/{club}/handlers/{handler}/personal-data");
      case "plan.issued.v1" -> new MadeBy("its plans");
      default -> ofFamily(type, type.substring(0, Math.max(0, type.indexOf('.'))));
    };
  }

  private static ScopeOfType ofFamily(String type, String family) {
    return switch (family) {
      case "session", "setup", "rep" -> anyOf(Scope.RECORDS_WRITE);
      case "timing" -> new AnyOf(EnumSet.of(Scope.TIMING_PUSH, Scope.RECORDS_WRITE));
      default ->
          switch (type) {
            case "event.withdrawn.v1",
                "trial.run.v1",
                "load.noted.v1",
                "homework.set.v1",
                "goal.set.v1" ->
                anyOf(Scope.RECORDS_WRITE);
            default -> anyOf(Scope.CLUB_MANAGE);
          };
    };
  }

  private static ScopeOfType anyOf(Scope scope) {
    return new AnyOf(Set.of(scope));
  }
}
