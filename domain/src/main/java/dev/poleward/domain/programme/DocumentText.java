package dev.poleward.domain.programme;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * JSON of our own writing (RFC 8259) into plain maps, lists, texts, numbers and truth values. Not
 * for what comes from outside: that the service judges and reads before the domain sees it. For one
 * thread.
 */
final class DocumentText {

  private final String text;
  private int at;

  private DocumentText(String text) {
    this.text = text;
  }

  /**
   * Reads an object.
   *
   * @throws IllegalArgumentException when the text is no JSON object
   */
  static Map<String, Object> read(String text) {
    DocumentText reading = new DocumentText(text);
    Map<String, Object> read = reading.object();
    reading.skipSpace();
    if (reading.at < text.length()) {
      throw reading.unexpected();
    }
    return read;
  }

  private Object value() {
    skipSpace();
    return switch (peek()) {
      case '{' -> object();
      case '[' -> list();
      case '"' -> string();
      case 't' -> word("true", true);
      case 'f' -> word("false", false);
      default -> number();
    };
  }

  private Map<String, Object> object() {
    Map<String, Object> members = new LinkedHashMap<>();
    expect('{');
    if (!isNext('}')) {
      do {
        skipSpace();
        String name = string();
        expect(':');
        if (members.put(name, value()) != null) {
          throw unexpected();
        }
      } while (isNext(','));
      expect('}');
    }
    return Collections.unmodifiableMap(members);
  }

  private List<Object> list() {
    List<Object> items = new ArrayList<>();
    expect('[');
    if (!isNext(']')) {
      do {
        items.add(value());
      } while (isNext(','));
      expect(']');
    }
    return Collections.unmodifiableList(items);
  }

  private String string() {
    expect('"');
    StringBuilder read = new StringBuilder();
    while (peek() != '"') {
      char next = text.charAt(at++);
      read.append(next == '\\' ? escaped() : next);
    }
    at++;
    return read.toString();
  }

  private char escaped() {
    char kind = peek();
    at++;
    return switch (kind) {
      case '"', '\\', '/' -> kind;
      case 'n' -> '\n';
      case 't' -> '\t';
      case 'u' -> {
        at += 4;
        yield (char) Integer.parseInt(text, at - 4, at, 16);
      }
      default -> throw unexpected();
    };
  }

  private Object number() {
    int from = at;
    while (at < text.length() && "+-.0123456789eE".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    String written = text.substring(from, at);
    if (written.isEmpty()) {
      throw unexpected();
    }
    Long whole = whole(written);
    return whole != null ? (Object) whole : (Object) Double.valueOf(written);
  }

  private static @Nullable Long whole(String written) {
    return written.matches("-?[0-9]{1,18}") ? Long.valueOf(written) : null;
  }

  private Object word(String word, boolean meaning) {
    if (!text.startsWith(word, at)) {
      throw unexpected();
    }
    at += word.length();
    return meaning;
  }

  private boolean isNext(char wanted) {
    skipSpace();
    if (peek() != wanted) {
      return false;
    }
    at++;
    return true;
  }

  private void expect(char wanted) {
    if (!isNext(wanted)) {
      throw unexpected();
    }
  }

  private char peek() {
    if (at >= text.length()) {
      throw unexpected();
    }
    return text.charAt(at);
  }

  private void skipSpace() {
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
  }

  private IllegalArgumentException unexpected() {
    return new IllegalArgumentException("not the JSON of a document, at character " + at);
  }
}
