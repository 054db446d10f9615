package dev.poleward.service.http;

import java.io.InputStream;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A GET as a test makes it up.
 *
 * @param query empty when there is none
 * @param inPath what stands in the open places of the route
 */
record AskedRead(
    Routes.Known route, Map<String, String> inPath, String query, String accept, String key)
    implements Request {

  Answer answer() {
    return Routes.answer(route, new Call(this));
  }

  /** The read that a Link header of an answer leads to. */
  AskedRead following(String link) {
    String target = link.substring(link.indexOf('<') + 1, link.indexOf('>'));
    if (!target.startsWith(path() + "?")) {
      throw new AssertionError("a link that leads elsewhere: " + link);
    }
    return new AskedRead(route, inPath, target.substring(path().length() + 1), accept, key);
  }

  @Override
  public String path() {
    String path = route.path();
    for (Map.Entry<String, String> each : inPath.entrySet()) {
      path = path.replace("{" + each.getKey() + "}", each.getValue());
    }
    return path;
  }

  @Override
  public Map<String, List<String>> parameters() {
    Map<String, List<String>> parameters = new LinkedHashMap<>();
    if (!query.isEmpty()) {
      for (String each : query.split("&", -1)) {
        int equals = each.indexOf('=');
        parameters.put(
            each.substring(0, equals),
            List.of(URLDecoder.decode(each.substring(equals + 1), StandardCharsets.UTF_8)));
      }
    }
    return parameters;
  }

  @Override
  public @Nullable String header(String name) {
    return headers().get(name);
  }

  @Override
  public Map<String, String> headers() {
    Map<String, String> headers = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    headers.put("Authorization", "Bearer " + key);
    headers.put("Accept", accept);
    return headers;
  }

  @Override
  public long bodyBytes() {
    return 0;
  }

  @Override
  public InputStream body() {
    return InputStream.nullInputStream();
  }

  @Override
  public String toString() {
    return path() + parameters() + " as " + accept;
  }
}
