package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.service.access.Scope;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.contract.Fault;
import dev.poleward.service.journal.AppendOutcome.DiskNearlyFull;
import dev.poleward.service.journal.AppendOutcome.QueueFull;
import dev.poleward.service.journal.AppendOutcome.Unavailable;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Why a request is refused (RFC 9457).
 *
 * @param detail what it is about in this case
 * @param faults faults in the body
 * @param parameters faults in parameters and headers, their names in place of pointers
 * @param retryAfter when it is worth trying again
 */
record Problem(
    ProblemKind kind,
    @Nullable String detail,
    List<Fault> faults,
    List<Fault> parameters,
    @Nullable Duration retryAfter) {

  private static final int FAULTS_MAX = 100;
  private static final int INSTANCE_CHARACTERS_MAX = 2_048;
  private static final String TYPES = "urn:poleward:problem:";

  static Problem of(ProblemKind kind, @Nullable String detail) {
    return new Problem(kind, detail, List.of(), List.of(), null);
  }

  static Problem later(ProblemKind kind, String detail, Duration retryAfter) {
    return new Problem(kind, detail, List.of(), List.of(), retryAfter);
  }

  static Problem inBody(List<Fault> faults) {
    return new Problem(ProblemKind.INVALID, null, faults, List.of(), null);
  }

  static Problem inParameters(List<Fault> faults) {
    return new Problem(ProblemKind.INVALID, null, List.of(), faults, null);
  }

  static Problem scopeMissing(Set<Scope> anyOf) {
    String names =
        new TreeSet<>(anyOf).stream().map(Scope::wire).collect(Collectors.joining(" or "));
    return of(ProblemKind.FORBIDDEN, "Needs the scope " + names + ".");
  }

  static Problem queueFull(QueueFull full) {
    return later(
        ProblemKind.JOURNAL_UNAVAILABLE,
        "Too many writes are under way. Nothing of this one was kept; send it again.",
        full.retryAfter());
  }

  static Problem unavailable(Unavailable unavailable) {
    return later(
        ProblemKind.JOURNAL_UNAVAILABLE,
        "It said: "
            + unavailable.why()
            + ". Some of it may be kept all the same; to send it again is safe.",
        unavailable.retryAfter());
  }

  static Problem diskNearlyFull(DiskNearlyFull full) {
    return later(
        ProblemKind.DISK_NEARLY_FULL,
        "There is not enough room on the disk to keep more. Nothing of this was kept.",
        full.retryAfter());
  }

  /**
   * The document.
   *
   * @param instance path of the request, left out when it is very long; absent in an item of a
   *     batch
   */
  ObjectNode document(@Nullable String instance) {
    ObjectNode document =
        new Writing()
            .put("type", TYPES + kind.slug())
            .put("title", kind.title())
            .put("status", kind.status())
            .put("detail", detail)
            .put("instance", fits(instance) ? instance : null)
            .done();
    if (!faults.isEmpty() || !parameters.isEmpty()) {
      ArrayNode errors = document.putArray("errors");
      faults.stream().limit(FAULTS_MAX).forEach(fault -> add(errors, "pointer", fault));
      parameters.stream()
          .limit(FAULTS_MAX - errors.size())
          .forEach(fault -> add(errors, "parameter", fault));
    }
    return document;
  }

  private static boolean fits(@Nullable String instance) {
    return instance != null && instance.length() <= INSTANCE_CHARACTERS_MAX;
  }

  private static void add(ArrayNode errors, String where, Fault fault) {
    errors.addObject().put(where, fault.pointer()).put("detail", fault.detail());
  }
}
