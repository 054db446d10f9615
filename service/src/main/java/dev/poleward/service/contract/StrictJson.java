package dev.poleward.service.contract;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.poleward.service.contract.ParsedBody.Parsed;
import dev.poleward.service.contract.ParsedBody.Unreadable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Reads JSON as RFC 8259 has it and no other: what two readers could understand differently is
 * refused. Safe for use by many threads.
 */
final class StrictJson {

  private static final int NESTING_MAX = 64;

  /** A tree takes some hundred bytes a token; a full batch of reps has less than 100,000. */
  private static final long TOKENS_MAX = 250_000;

  private static final int DIGITS_MAX = 1_000;
  private static final int NAME_CHARACTERS_MAX = 512;
  private static final int MESSAGE_CHARACTERS_MAX = 200;

  private final JsonFactory factory =
      new JsonFactoryBuilder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          // Names come from outside: they are not to fill the JVM's own table of texts.
          .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(NESTING_MAX)
                  .maxNumberLength(DIGITS_MAX)
                  .maxNameLength(NAME_CHARACTERS_MAX)
                  .maxTokenCount(TOKENS_MAX)
                  .build())
          .build();

  private final ObjectReader reader =
      JsonMapper.builder(factory).nodeFactory(new FiniteNumbers()).build().reader();

  ParsedBody parse(byte[] body) {
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(body)).toString();
    } catch (CharacterCodingException e) {
      return unreadable("is not UTF-8");
    }
    try (JsonParser parser = factory.createParser(text)) {
      ParsedBody read = read(parser);
      int half = read instanceof Parsed ? HalfPairs.first(text) : -1;
      return half < 0 ? read : unreadable("has half a surrogate pair at " + place(text, half));
    } catch (IOException e) {
      throw new UncheckedIOException("a text is at hand", e);
    }
  }

  private ParsedBody read(JsonParser parser) throws IOException {
    try {
      JsonNode tree = reader.readTree(parser);
      if (tree == null || tree.isMissingNode()) {
        return unreadable("is empty; JSON is expected");
      }
      if (parser.nextToken() != null) {
        return unreadable("goes on after its end, at " + place(parser.currentTokenLocation()));
      }
      return new Parsed(tree);
    } catch (FiniteNumbers.Infinite e) {
      return unreadable(
          "has a number beyond all bounds at " + place(parser.currentTokenLocation()));
    } catch (JsonProcessingException e) {
      return unreadable(sentence(e, parser));
    }
  }

  private static String sentence(JsonProcessingException e, JsonParser parser) {
    JsonLocation location = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
    String place = place(location);
    return switch (e) {
      case JsonEOFException _ -> "is not JSON: it ends too early, at " + place;
      case StreamConstraintsException _ -> limit(e.getOriginalMessage()) + ", at " + place;
      default -> "is not JSON at " + place + ": " + shortened(e.getOriginalMessage());
    };
  }

  /** Which of our limits the reader ran into; it tells that in its message alone. */
  private static String limit(String message) {
    if (message.contains("nesting depth")) {
      return "is nested deeper than %d levels".formatted(NESTING_MAX);
    }
    if (message.contains("Number value length")) {
      return "has a number of more than %d digits".formatted(DIGITS_MAX);
    }
    if (message.contains("Name length")) {
      return "has a name of more than %d characters".formatted(NAME_CHARACTERS_MAX);
    }
    return "is larger than what is read here";
  }

  /** Without the reader's advice to programmers, and not at any length. */
  private static String shortened(String message) {
    int advice = message.indexOf(": enable `");
    String plain = advice < 0 ? message : message.substring(0, advice);
    return plain.substring(0, Math.min(plain.length(), MESSAGE_CHARACTERS_MAX));
  }

  private static String place(JsonLocation location) {
    return place(location.getLineNr(), location.getColumnNr());
  }

  private static String place(String text, int at) {
    int lineStart = text.lastIndexOf('\n', at) + 1;
    long line = 1 + text.substring(0, lineStart).chars().filter(each -> each == '\n').count();
    return place(line, at - lineStart + 1L);
  }

  private static String place(long line, long column) {
    return "line %d, column %d".formatted(line, column);
  }

  private static Unreadable unreadable(String detail) {
    return new Unreadable(List.of(new Fault("", detail)));
  }
}
