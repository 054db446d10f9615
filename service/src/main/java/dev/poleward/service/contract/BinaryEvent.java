package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * An event that came in the binary mode of the CloudEvents HTTP binding, put into its structured
 * form: attributes from headers, data from the body.
 *
 * @param tree the structured form
 * @param faults of headers that cannot be decoded; their attributes are not in the tree
 */
record BinaryEvent(ObjectNode tree, List<Fault> faults) {

  private static final String PREFIX = "ce-";
  private static final String UNDECODABLE =
      "is not decodable: percent-encode as the CloudEvents HTTP binding says, in UTF-8";

  /**
   * Puts an event together.
   *
   * @param headers by their lower-case names; those without {@code ce-} are passed over
   */
  static BinaryEvent of(Map<String, String> headers, JsonNode data) {
    ObjectNode tree = JsonNodeFactory.instance.objectNode();
    List<Fault> faults = new ArrayList<>();
    headers.forEach(
        (header, value) -> {
          if (header.startsWith(PREFIX)) {
            read(header.substring(PREFIX.length()), value, tree, faults);
          }
        });
    tree.set("data", data);
    return new BinaryEvent(tree, faults);
  }

  private static void read(String name, String value, ObjectNode tree, List<Fault> faults) {
    String pointer = Pointers.member("", name);
    if (name.equals("data")) {
      faults.add(new Fault(pointer, "comes in the body, not in a header"));
      return;
    }
    String text = decoded(unquoted(value));
    if (text == null) {
      faults.add(new Fault(pointer, UNDECODABLE));
    } else if (name.equals("forgotten") && (text.equals("true") || text.equals("false"))) {
      // Headers know no kinds; this is the one attribute whose kind is.
      tree.put(name, text.equals("true"));
    } else {
      tree.put(name, text);
    }
  }

  /** Older senders quote what they do not percent-encode. */
  private static String unquoted(String value) {
    if (value.length() < 2 || !value.startsWith("\"") || !value.endsWith("\"")) {
      return value;
    }
    StringBuilder text = new StringBuilder(value.length());
    for (int i = 1; i < value.length() - 1; i++) {
      if (value.charAt(i) == '\\' && i + 1 < value.length() - 1) {
        i++;
      }
      text.append(value.charAt(i));
    }
    return text.toString();
  }

  private static @Nullable String decoded(String value) {
    ByteBuffer bytes = ByteBuffer.allocate(value.length());
    for (int i = 0; i < value.length(); i++) {
      char each = value.charAt(i);
      if (each < ' ' || each > '~') {
        return null;
      }
      if (each != '%') {
        bytes.put((byte) each);
        continue;
      }
      if (i + 2 >= value.length()) {
        return null;
      }
      int high = Character.digit(value.charAt(i + 1), 16);
      int low = Character.digit(value.charAt(i + 2), 16);
      if (high < 0 || low < 0) {
        return null;
      }
      bytes.put((byte) (high * 16 + low));
      i += 2;
    }
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(bytes.flip()).toString();
    } catch (CharacterCodingException e) {
      return null;
    }
  }
}
