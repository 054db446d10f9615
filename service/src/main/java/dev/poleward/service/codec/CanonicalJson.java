package dev.poleward.service.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.erdtman.jcs.JsonCanonicalizer;

/** The RFC 8785 form of JSON: equal content, equal text. */
public final class CanonicalJson {

  private CanonicalJson() {}

  /**
   * The canonical text of an object or array.
   *
   * @param node without lone surrogates in its texts, and with finite numbers only
   */
  public static String of(JsonNode node) {
    try {
      return new JsonCanonicalizer(node.toString()).getEncodedString();
    } catch (IOException e) {
      throw new UncheckedIOException("a tree prints as JSON", e);
    }
  }
}
