package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.record.Moment;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A page of a list and where the next one begins.
 *
 * @param next what the next page's cursor stands for; null on the last page
 */
record Page<T>(List<T> items, @Nullable String next) {

  /**
   * The page of a whole list that is asked for.
   *
   * @param ascending by (time, id)
   */
  static <T> Page<T> of(List<T> ascending, Function<T, Moment> momentOf, Asked.ByMoment asked) {
    Moment after = asked.after();
    int first = after == null ? 0 : firstAfter(ascending, momentOf, after);
    return from(first, ascending, asked.limit(), last -> Cursors.written(momentOf.apply(last)));
  }

  /**
   * The page of a whole list that is asked for.
   *
   * @param ascending by id
   */
  static <T> Page<T> of(List<T> ascending, Function<T, String> idOf, Asked.ById asked) {
    int first = firstAfter(ascending, idOf, asked.after());
    return from(first, ascending, asked.limit(), idOf);
  }

  private static <T> Page<T> from(int first, List<T> all, int limit, Function<T, String> placeOf) {
    int end = Math.min(all.size(), first + limit);
    return new Page<>(
        all.subList(first, end), end < all.size() ? placeOf.apply(all.get(end - 1)) : null);
  }

  private static <T, K extends Comparable<K>> int firstAfter(
      List<T> ascending, Function<T, K> keyOf, K after) {
    int low = 0;
    int high = ascending.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (keyOf.apply(ascending.get(middle)).compareTo(after) <= 0) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The page as a list of that name, with a link to the next. */
  Answer listed(Call call, String plural, Function<T, ObjectNode> shape) {
    ObjectNode body = JsonNodeFactory.instance.objectNode();
    ArrayNode shown = body.putArray(plural);
    items.forEach(item -> shown.add(shape.apply(item)));
    return linked(call, Answer.json(200, body));
  }

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
