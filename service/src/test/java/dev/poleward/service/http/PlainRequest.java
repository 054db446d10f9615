package dev.poleward.service.http;

import dev.poleward.service.RunningService;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A request for tests that try every route in many ways: a tenth of what one costs that can read
 * like a sentence. Its answer is held to the contract all the same. Immutable.
 */
record PlainRequest(int port, Map<String, String> headers) {

  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  /**
   * What came back.
   *
   * @param headers by name, whatever its case
   */
  record Answered(int status, Map<String, List<String>> headers, String body) {

    @Nullable String header(String name) {
      List<String> values = headers.get(name);
      return values == null ? null : values.getFirst();
    }
  }

  /** Of somebody without a key. */
  static PlainRequest to(RunningService service) {
    return new PlainRequest(service.port(), Map.of());
  }

  /** The same of somebody with that key. */
  PlainRequest as(String accessKey) {
    return with("Authorization", "Bearer " + accessKey);
  }

  PlainRequest with(String name, String value) {
    Map<String, String> more = new TreeMap<>(headers);
    more.put(name, value);
    return new PlainRequest(port, more);
  }

  Answered get(String path) {
    return send("GET", path, BodyPublishers.noBody());
  }

  Answered send(String method, String path) {
    return send(method, path, BodyPublishers.noBody());
  }

  Answered send(String method, String path, String body) {
    return send(method, path, BodyPublishers.ofString(body));
  }

  private Answered send(String method, String path, BodyPublisher body) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path)).method(method, body);
    headers.forEach(request::setHeader);
    try {
      HttpResponse<byte[]> response = CLIENT.send(request.build(), BodyHandlers.ofByteArray());
      Map<String, List<String>> headers = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
      headers.putAll(response.headers().map());
      String pathAlone = URI.create(path).getRawPath();
      ContractFilter.check(method, pathAlone, response.statusCode(), headers, response.body());
      return new Answered(
          response.statusCode(), headers, new String(response.body(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the test is to stop", e);
    }
  }
}
