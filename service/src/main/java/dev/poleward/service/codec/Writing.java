package dev.poleward.service.codec;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Builds an object member by member; what is null is left out. For one thread. */
public final class Writing {

  private final ObjectNode node = JsonNodeFactory.instance.objectNode();

  /** Adds text. */
  public Writing put(String name, @Nullable String value) {
    if (value != null) {
      node.put(name, value);
    }
    return this;
  }

  /**
   * Adds a number, without a fraction where it has none.
   *
   * @throws IllegalArgumentException when it is no number that JSON has
   */
  public Writing put(String name, @Nullable Double value) {
    if (value != null) {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException(name + " is not finite: " + value);
      }
      if (value == Math.rint(value) && Math.abs(value) < 1e15) {
        node.put(name, value.longValue());
      } else {
        node.put(name, value);
      }
    }
    return this;
  }

  /** Adds a whole number. */
  public Writing put(String name, @Nullable Integer value) {
    if (value != null) {
      node.put(name, value);
    }
    return this;
  }

  /** Adds a whole number. */
  public Writing put(String name, long value) {
    node.put(name, value);
    return this;
  }

  /** Adds a truth value. */
  public Writing put(String name, @Nullable Boolean value) {
    if (value != null) {
      node.put(name, value);
    }
    return this;
  }

  /** Adds one of a fixed choice, in lower case with hyphens. */
  public Writing put(String name, @Nullable Enum<?> value) {
    return put(name, value == null ? null : wireName(value));
  }

  /** Adds what prints itself as the wire wants it: dates, clock positions. */
  public Writing putPrinted(String name, @Nullable Object value) {
    return put(name, value == null ? null : value.toString());
  }

  /**
   * Adds a time with the offset that it was said with (RFC 3339: seconds always, unlike Java's
   * own).
   */
  public Writing put(String name, OffsetDateTime time) {
    return put(name, DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time));
  }

  /** Adds an object. */
  public Writing put(String name, @Nullable ObjectNode value) {
    if (value != null) {
      node.set(name, value);
    }
    return this;
  }

  /** Adds a document. */
  public Writing put(String name, @Nullable Map<String, Object> document) {
    return put(name, document == null ? null : Documents.write(document));
  }

  /** Adds a list of texts. */
  public Writing putTexts(String name, @Nullable List<String> values) {
    if (values != null) {
      ArrayNode array = node.putArray(name);
      values.forEach(array::add);
    }
    return this;
  }

  /** Adds a list of objects. */
  public <T> Writing putObjects(
      String name, @Nullable List<T> values, Function<T, ObjectNode> element) {
    if (values != null) {
      ArrayNode array = node.putArray(name);
      values.forEach(value -> array.add(element.apply(value)));
    }
    return this;
  }

  /** Adds a member that says null. */
  public Writing putNull(String name) {
    node.putNull(name);
    return this;
  }

  /** The object. */
  public ObjectNode done() {
    return node;
  }

  /** How a fixed choice is spelled on the wire: {@code REAR_CROSS} is {@code rear-cross}. */
  public static String wireName(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
