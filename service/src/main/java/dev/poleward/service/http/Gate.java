package dev.poleward.service.http;

import dev.poleward.service.access.AccessKeys;
import dev.poleward.service.access.Authentication;
import dev.poleward.service.access.Authentication.Identity;
import dev.poleward.service.access.Permission;
import dev.poleward.service.access.Scope;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/** Lets in who may come in. Safe for use by many threads. */
final class Gate {

  private static final String BEARER = "Bearer ";
  private static final Duration SOON = Duration.ofSeconds(1);

  private final AccessKeys keys;
  private final BooleanSupplier ready;

  /**
   * Knows people by their keys.
   *
   * @param ready whether keys are known yet: until then nobody can be told from a stranger
   */
  Gate(AccessKeys keys, BooleanSupplier ready) {
    this.keys = keys;
    this.ready = ready;
  }

  /** Answers as {@code then} does for somebody with one of these scopes in that club. */
  Answer inClub(Call call, String club, Set<Scope> anyOf, Function<Identity, Answer> then) {
    return known(
        call,
        identity ->
            switch (Permission.of(identity, club, anyOf)) {
              case Permission.Granted _ -> then.apply(identity);
              case Permission.OtherClub _ ->
                  call.refused(ProblemKind.FORBIDDEN, "The key is not for this club.");
              case Permission.ScopeMissing missing ->
                  call.refused(Problem.scopeMissing(missing.anyOf()));
            });
  }

  /** Answers as {@code then} does for whoever has a key, of whichever club and scope. */
  Answer anybody(Call call, Function<Identity, Answer> then) {
    return known(call, then);
  }

  /** Answers as {@code then} does for the host. */
  Answer asHost(Call call, Function<Identity, Answer> then) {
    return known(
        call,
        identity ->
            Permission.asHost(identity)
                ? then.apply(identity)
                : call.refused(Problem.scopeMissing(Set.of(Scope.HOST))));
  }

  /** The answer to everybody while nobody can be told from a stranger. */
  Optional<Answer> notReady(Call call) {
    return ready.getAsBoolean()
        ? Optional.empty()
        : Optional.of(
            call.refused(Problem.later(ProblemKind.NOT_READY, "It is reading its journal.", SOON)));
  }

  private Answer known(Call call, Function<Identity, Answer> then) {
    Optional<Answer> notReady = notReady(call);
    if (notReady.isPresent()) {
      return notReady.get();
    }
    Optional<String> bearer = bearer(call);
    if (bearer.isEmpty()) {
      return call.refused(
          ProblemKind.UNAUTHENTICATED, "Send the header Authorization: Bearer <access key>.");
    }
    return switch (keys.authenticate(bearer.get())) {
      case Identity identity -> then.apply(identity);
      case Authentication.Unknown _, Authentication.Malformed _ ->
          call.refused(ProblemKind.UNAUTHENTICATED, "This access key opens nothing.");
      case Authentication.Undecided _ ->
          call.refused(
              Problem.later(
                  ProblemKind.NOT_READY, "It could not catch up with the journal in time.", SOON));
    };
  }

  private static Optional<String> bearer(Call call) {
    return call.header("Authorization")
        .filter(value -> value.regionMatches(true, 0, BEARER, 0, BEARER.length()))
        .map(value -> value.substring(BEARER.length()).trim())
        .filter(value -> !value.isEmpty());
  }
}
