package dev.poleward.service.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a request is answered with.
 *
 * @param body the bytes; empty for answers without a body
 * @param reason what it was refused for; empty when it was not
 * @param headers besides Content-Type and Content-Length
 */
@SuppressWarnings("ArrayRecordComponent") // made once, written once, never compared
record Answer(
    int status, String contentType, byte[] body, Map<String, String> headers, String reason) {

  Answer(int status, String contentType, byte[] body, Map<String, String> headers) {
    this(status, contentType, body, headers, "");
  }

  static final String JSON = "application/json";
  static final String PROBLEM_JSON = "application/problem+json";

  private static final ObjectMapper MAPPER = new ObjectMapper();

  static Answer json(int status, JsonNode body) {
    return new Answer(status, JSON, bytes(body), Map.of());
  }

  static Answer text(String contentType, String body) {
    return new Answer(200, contentType, body.getBytes(StandardCharsets.UTF_8), Map.of());
  }

  static Answer notModified() {
    return new Answer(304, JSON, new byte[0], Map.of());
  }

  static Answer refused(Problem problem, String path) {
    Answer answer =
        new Answer(
            problem.kind().status(),
            PROBLEM_JSON,
            bytes(problem.document(path)),
            Map.of(),
            problem.kind().slug());
    if (problem.retryAfter() != null) {
      long seconds = Math.max(1, problem.retryAfter().toSeconds());
      answer = answer.with("Retry-After", Long.toString(seconds));
    }
    return problem.kind() == ProblemKind.UNAUTHENTICATED
        ? answer.with("WWW-Authenticate", "Bearer")
        : answer;
  }

  Answer with(String name, String value) {
    Map<String, String> more = new LinkedHashMap<>(headers);
    more.put(name, value);
    return new Answer(status, contentType, body, more, reason);
  }

  static byte[] bytes(JsonNode body) {
    try {
      return MAPPER.writeValueAsBytes(body);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree can be written", e);
    }
  }
}
