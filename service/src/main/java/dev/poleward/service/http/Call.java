package dev.poleward.service.http;

import dev.poleward.service.codec.Ids;
import dev.poleward.service.contract.Fault;
import java.io.IOException;
import java.io.InputStream;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A request, as far as routes need to know it. For one thread. */
final class Call {

  /** Largest body that is read. */
  static final int BODY_BYTES_MAX = 4 << 20;

  /** What is read of a body that nobody wants. */
  private static final int DROPPED_BYTES_MAX = 32 << 20;

  private static final int DROPPED_AT_ONCE = 1 << 16;

  private final Request request;
  private final String form;

  Call(Request request) {
    this(request, Answer.JSON);
  }

  private Call(Request request, String form) {
    this.request = request;
    this.form = form;
  }

  /** The same call, to be answered in that form. */
  Call in(String chosen) {
    return new Call(request, chosen);
  }

  /** The media type that was chosen for the answer. */
  String form() {
    return form;
  }

  /** The path, without the query. */
  String path() {
    return request.path();
  }

  /** The path and the query, as sent. */
  String question() {
    String query = request.query();
    return query == null ? path() : path() + '?' + query;
  }

  /** What is wrong with the ids in the path, and with how the query is written. */
  List<Fault> faults() {
    List<Fault> faults = new ArrayList<>();
    request
        .inPath()
        .forEach(
            (name, value) -> {
              if (!Ids.isId(value)) {
                faults.add(
                    new Fault(name, "must be 1 to 64 of A-Z a-z 0-9 . _ ~ -, and not . or .."));
              }
            });
    String query = request.query();
    if (query != null && !isDecodable(query)) {
      // Parameters that cannot be decoded would be passed over in silence.
      faults.add(new Fault("", "the query is not percent-encoded"));
    }
    return faults;
  }

  private static boolean isDecodable(String query) {
    try {
      URLDecoder.decode(query, StandardCharsets.UTF_8);
      return true;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  String inPath(String name) {
    String value = request.inPath().get(name);
    if (value == null) {
      throw new IllegalArgumentException("the route leaves no place open for " + name);
    }
    return value;
  }

  Optional<String> header(String name) {
    return Optional.ofNullable(request.header(name));
  }

  /** All headers, their names in lower case. */
  Map<String, String> headers() {
    Map<String, String> headers = new HashMap<>();
    request.headers().forEach((name, value) -> headers.put(name.toLowerCase(Locale.ROOT), value));
    return headers;
  }

  /** Query parameters, each with all its values. */
  Map<String, List<String>> query() {
    return request.parameters();
  }

  /** The media type of the body without its parameters, in lower case. */
  String mediaType() {
    String type = request.header("Content-Type");
    if (type == null) {
      return "";
    }
    int end = type.indexOf(';');
    return (end < 0 ? type : type.substring(0, end)).trim().toLowerCase(Locale.ROOT);
  }

  /** What came as a body. */
  sealed interface Body {

    /** All of it. */
    @SuppressWarnings("ArrayRecordComponent") // read once, never compared
    record Whole(byte[] bytes) implements Body {}

    /** More than {@link #BODY_BYTES_MAX}. */
    record TooLarge() implements Body {}

    /** Less than was announced: the client went away, or lost its way among its chunks. */
    record BrokenOff() implements Body {}
  }

  /** How much there may be to read: what is announced, or else all that is ever read. */
  int bodyBytesAtMost() {
    long announced = request.bodyBytes();
    return announced < 0 || announced > BODY_BYTES_MAX ? BODY_BYTES_MAX : (int) announced;
  }

  Body body() {
    try {
      if (request.bodyBytes() > BODY_BYTES_MAX) {
        return new Body.TooLarge();
      }
      byte[] body = request.body().readNBytes(BODY_BYTES_MAX + 1);
      return body.length > BODY_BYTES_MAX ? new Body.TooLarge() : new Body.Whole(body);
    } catch (IOException e) {
      return new Body.BrokenOff();
    }
  }

  /**
   * Reads what is left of the body, up to {@link #DROPPED_BYTES_MAX}, and drops it: who is still
   * sending when the connection closes does not get to see the answer. Who asks first whether to
   * send is not made to.
   */
  void dropRest() {
    if (header("Expect").isPresent()) {
      return;
    }
    try {
      InputStream rest = request.body();
      byte[] dropped = new byte[DROPPED_AT_ONCE];
      int most = DROPPED_BYTES_MAX;
      for (int read = 0; read >= 0 && most > 0; most -= read) {
        read = rest.read(dropped);
      }
    } catch (IOException e) {
      // The client went away; nobody is left to be answered.
    }
  }

  Answer refused(Problem problem) {
    return Answer.refused(problem, path());
  }

  Answer refused(ProblemKind kind, String detail) {
    return refused(Problem.of(kind, detail));
  }
}
