package dev.poleward.service.codec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.layout.ClockPosition;
import dev.poleward.domain.layout.EntryAngle;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Typed access to the members of an object that the contract has already judged: a member of the
 * wrong type is a bug here, not an expected outcome.
 */
final class Members {

  private final ObjectNode node;

  Members(ObjectNode node) {
    this.node = node;
  }

  String text(String name) {
    return required(name, optionalText(name));
  }

  @Nullable String optionalText(String name) {
    JsonNode value = value(name);
    return value == null ? null : value.textValue();
  }

  double number(String name) {
    return required(name, optionalNumber(name));
  }

  @Nullable Double optionalNumber(String name) {
    JsonNode value = value(name);
    return value == null ? null : value.doubleValue();
  }

  int whole(String name) {
    return required(name, optionalWhole(name));
  }

  @Nullable Integer optionalWhole(String name) {
    JsonNode value = value(name);
    return value == null ? null : value.intValue();
  }

  long longWhole(String name) {
    return required(name, value(name)).longValue();
  }

  @Nullable Boolean optionalTruth(String name) {
    JsonNode value = value(name);
    return value == null ? null : value.booleanValue();
  }

  boolean truth(String name) {
    return required(name, optionalTruth(name));
  }

  LocalDate date(String name) {
    return required(name, optionalDate(name));
  }

  @Nullable LocalDate optionalDate(String name) {
    String text = optionalText(name);
    return text == null ? null : LocalDate.parse(text);
  }

  <E extends Enum<E>> E choice(String name, Class<E> type) {
    return required(name, optionalChoice(name, type));
  }

  <E extends Enum<E>> @Nullable E optionalChoice(String name, Class<E> type) {
    String text = optionalText(name);
    return text == null
        ? null
        : Enum.valueOf(type, text.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  @Nullable EntryAngle optionalAngle(String name) {
    Double degrees = optionalNumber(name);
    return degrees == null ? null : new EntryAngle(degrees);
  }

  @Nullable ClockPosition optionalClock(String name) {
    String text = optionalText(name);
    return text == null ? null : ClockPosition.read(text).orElseThrow();
  }

  <T> @Nullable List<T> optionalList(String name, Function<JsonNode, T> element) {
    JsonNode value = value(name);
    if (value == null) {
      return null;
    }
    List<T> list = new ArrayList<>(value.size());
    value.forEach(each -> list.add(element.apply(each)));
    return list;
  }

  @Nullable List<String> optionalTexts(String name) {
    return optionalList(name, JsonNode::textValue);
  }

  @Nullable Map<String, Object> optionalDocument(String name) {
    JsonNode value = value(name);
    return value == null ? null : Documents.read((ObjectNode) value);
  }

  @Nullable Members optionalObject(String name) {
    JsonNode value = value(name);
    return value == null ? null : new Members((ObjectNode) value);
  }

  /** All of the object, as a document. */
  Map<String, Object> document() {
    return Documents.read(node);
  }

  /** Whether the member is there and says null. */
  boolean isNull(String name) {
    JsonNode value = node.get(name);
    return value != null && value.isNull();
  }

  private @Nullable JsonNode value(String name) {
    JsonNode value = node.get(name);
    return value == null || value.isNull() ? null : value;
  }

  private static <T> T required(String name, @Nullable T value) {
    if (value == null) {
      throw new IllegalArgumentException("the contract requires " + name);
    }
    return value;
  }
}
