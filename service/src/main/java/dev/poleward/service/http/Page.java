package dev.poleward.service.http;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A page of a list and where the next one begins.
 *
 * @param next what the next page's cursor stands for; null on the last page
 */
record Page<T>(List<T> items, @Nullable String next) {

  /** Adds {@code Link: rel="next"} (RFC 8288) while there is more. */
  Answer linked(Call call, Answer answer) {
    return next == null ? answer : link(call, answer, "cursor", Parameters.cursor(next));
  }

  /** Adds a link to the same list with one parameter changed. */
  static Answer link(Call call, Answer answer, String parameter, String value) {
    String query =
        Stream.concat(
                call.query().entrySet().stream()
                    .filter(each -> !each.getKey().equals(parameter))
                    .map(each -> encoded(each.getKey(), each.getValue().getFirst())),
                Stream.of(encoded(parameter, value)))
            .collect(Collectors.joining("&"));
    return answer.with("Link", "<" + call.path() + "?" + query + ">; rel=\"next\"");
  }

  private static String encoded(String name, String value) {
    return name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8);
  }
}
