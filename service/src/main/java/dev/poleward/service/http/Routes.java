package dev.poleward.service.http;

import dev.poleward.service.contract.Fault;
import dev.poleward.service.journal.JournalException;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Which path leads where. Every answer is written here and nowhere else, so that every refusal is a
 * problem document and every request is timed.
 */
final class Routes {

  private static final Logger LOG = LoggerFactory.getLogger(Routes.class);

  private static final List<String> JSON = List.of(Answer.JSON);

  /** Answers a request. */
  interface Route {
    Answer answer(Call call);
  }

  /**
   * A route as the contract names it: {@code GET /v1/clubs/{club}}.
   *
   * @param forms media types of the answer, the usual one first
   */
  record Known(HandlerType type, String path, List<String> forms, Route route) {

    String method() {
      return type.name();
    }
  }

  /** Stands for the route in the timing of what leads nowhere. */
  private static final String NO_ROUTE = "none";

  private static final String BEGUN = "begun";

  private static final Set<String> METHODS =
      Set.of("GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS");

  private final Metrics metrics;
  private final UnderWay underWay = new UnderWay();
  private final List<Known> known = new ArrayList<>();

  Routes(Metrics metrics) {
    this.metrics = metrics;
  }

  Routes get(String path, Route route) {
    return get(path, JSON, route);
  }

  Routes get(String path, List<String> forms, Route route) {
    known.add(new Known(HandlerType.GET, path, forms, route));
    return this;
  }

  Routes post(String path, Route route) {
    return post(path, JSON, route);
  }

  Routes post(String path, List<String> forms, Route route) {
    known.add(new Known(HandlerType.POST, path, forms, route));
    return this;
  }

  Routes delete(String path, Route route) {
    known.add(new Known(HandlerType.DELETE, path, JSON, route));
    return this;
  }

  /** Begins no more requests and waits for those under way. */
  void stop() {
    underWay.stop();
  }

  /** All routes, to be compared with the contract. */
  List<Known> all() {
    return List.copyOf(known);
  }

  void addTo(JavalinConfig config) {
    for (Known each : known) {
      config.routes.addHttpHandler(each.type(), each.path(), context -> answer(each, context));
      if (each.type().equals(HandlerType.GET)) {
        // The same with nothing behind the headers; the HTTP layer leaves the body out.
        config.routes.addHttpHandler(
            HandlerType.HEAD, each.path(), context -> answer(each, context));
      }
    }
    config.routes.before(context -> context.attribute(BEGUN, System.nanoTime()));
    config.routes.error(
        404,
        context -> leadsNowhere(context, ProblemKind.NOT_FOUND, "There is nothing at this path."));
    config.routes.error(
        405,
        context ->
            leadsNowhere(
                context, ProblemKind.METHOD_NOT_ALLOWED, "Allow says which methods it knows."));
  }

  private void answer(Known route, Context context) {
    Call call = new Call(new JavalinRequest(context));
    if (!underWay.begin()) {
      write(
          context,
          call.refused(
              Problem.later(ProblemKind.NOT_READY, "It is being stopped.", Duration.ofSeconds(2))));
      return;
    }
    try {
      answer(route, call, context);
    } finally {
      underWay.end();
    }
  }

  private void answer(Known route, Call call, Context context) {
    Answer answer;
    try {
      answer = answer(route, call);
    } catch (JournalException e) {
      LOG.warn("{} {}: {}", route.method(), route.path(), e.getMessage());
      answer =
          call.refused(
              Problem.later(
                  ProblemKind.JOURNAL_UNAVAILABLE,
                  "The journal or the keys of people cannot be reached now.",
                  Duration.ofSeconds(2)));
    } catch (RuntimeException e) {
      LOG.error("{} {} failed", route.method(), route.path(), e);
      answer = call.refused(ProblemKind.INTERNAL, "It is in the log of the service.");
    }
    if (answer.status() >= 400) {
      call.dropRest();
    }
    write(context, answer);
    time(context, route.method(), route.path(), answer);
  }

  private void time(Context context, String method, String path, Answer answer) {
    Long begun = context.attribute(BEGUN);
    Duration took = begun == null ? Duration.ZERO : Duration.ofNanos(System.nanoTime() - begun);
    metrics.answered(method, path, answer.status(), took);
  }

  /** What is wrong whatever the route, is told here. */
  static Answer answer(Known route, Call call) {
    List<Fault> faults = call.faults();
    if (!faults.isEmpty()) {
      return call.refused(Problem.inParameters(faults));
    }
    Optional<String> form = Form.choose(call, route.forms());
    if (form.isEmpty()) {
      return call.refused(
          ProblemKind.NOT_ACCEPTABLE, "It comes as " + String.join(" or ", route.forms()) + ".");
    }
    return route.route().answer(call.in(form.get()));
  }

  private void write(Context context, Answer answer) {
    context.status(answer.status());
    answer.headers().forEach(context::header);
    if (answer.status() == 304) {
      // Nothing follows, of no type; or else the HTTP layer names its own.
      context.res().setContentType(null);
    } else {
      context.contentType(answer.contentType());
      context.result(answer.body());
    }
    if (answer.status() >= 400) {
      metrics.refused(answer.reason());
    }
  }

  private void leadsNowhere(Context context, ProblemKind kind, String detail) {
    if (!isAnswered(context)) {
      Answer answer = new Call(new JavalinRequest(context)).refused(kind, detail);
      write(context, answer);
      time(context, knownMethod(context), NO_ROUTE, answer);
    }
  }

  /** Whoever asks may name whatever method; as labels there are few of them. */
  private static String knownMethod(Context context) {
    String method = context.req().getMethod();
    return METHODS.contains(method) ? method : "other";
  }

  /** Javalin asks for every answer of that status, those of our own routes included. */
  private static boolean isAnswered(Context context) {
    String type = context.res().getContentType();
    return type != null && type.startsWith(Answer.PROBLEM_JSON);
  }
}
