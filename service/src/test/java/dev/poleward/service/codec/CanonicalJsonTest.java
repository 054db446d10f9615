package dev.poleward.service.codec;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The examples of RFC 8785 itself. */
class CanonicalJsonTest {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  /** RFC 8785, section 3.2.2, and its result in 3.2.3. */
  @Test
  void literalsNumbersAndStrings() {
    String written =
        """
        {
          "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
          "string": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/",
          "literals": [null, true, false]
        }
        """;

    assertThat(CanonicalJson.of(read(written)))
        .isEqualTo(
            "{\"literals\":[null,true,false],"
                + "\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],"
                + "\"string\":\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}");
  }

  /** RFC 8785, section 3.2.3: names in the order of their UTF-16 units. */
  @Test
  void namesInOrder() {
    String written =
        """
        {
          "\\u20ac": "Euro Sign",
          "\\r": "Carriage Return",
          "\\ufb33": "Hebrew Letter Dalet With Dagesh",
          "1": "One",
          "\\ud83d\\ude00": "Emoji: Grinning Face",
          "\\u0080": "Control",
          "\\u00f6": "Latin Small Letter O With Diaeresis"
        }
        """;

    assertThat(CanonicalJson.of(read(written)))
        .isEqualTo(
            "{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\","
                + "\"ö\":\"Latin Small Letter O With Diaeresis\",\"€\":\"Euro Sign\","
                + "\"😀\":\"Emoji: Grinning Face\","
                + "\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}");
  }

  /** RFC 8785, appendix B; without NaN and Infinity, which no body can say. */
  @ParameterizedTest
  @CsvSource({
    "0000000000000000, 0",
    "8000000000000000, 0",
    "0000000000000001, 5e-324",
    "8000000000000001, -5e-324",
    "7fefffffffffffff, 1.7976931348623157e+308",
    "ffefffffffffffff, -1.7976931348623157e+308",
    "4340000000000000, 9007199254740992",
    "c340000000000000, -9007199254740992",
    "4430000000000000, 295147905179352830000",
    "44b52d02c7e14af5, 9.999999999999997e+22",
    "44b52d02c7e14af6, 1e+23",
    "44b52d02c7e14af7, 1.0000000000000001e+23",
    "444b1ae4d6e2ef4e, 999999999999999700000",
    "444b1ae4d6e2ef4f, 999999999999999900000",
    "444b1ae4d6e2ef50, 1e+21",
    "3eb0c6f7a0b5ed8c, 9.999999999999997e-7",
    "3eb0c6f7a0b5ed8d, 0.000001",
    "41b3de4355555553, 333333333.3333332",
    "41b3de4355555554, 333333333.33333325",
    "41b3de4355555555, 333333333.3333333",
    "41b3de4355555556, 333333333.3333334",
    "41b3de4355555557, 333333333.33333343",
    "becbf647612f3696, -0.0000033333333333333333",
    "43143ff3c1cb0959, 1424953923781206.2",
  })
  void numbers(String bits, String text) {
    double number = Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16));

    assertThat(canonical(JsonNodeFactory.instance.numberNode(number))).isEqualTo(text);
    assertThat(canonical(read(Double.toString(number)))).isEqualTo(text);
  }

  /** RFC 8785, section 3.2.2.2: what is escaped, and how; everything else is as it is. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\\u0008\\u0009\\u000a\\u000c\\u000d | \\b\\t\\n\\f\\r",
        "\\u0000\\u001F\\u000b               | \\u0000\\u001f\\u000b",
        "\\\"\\\\\\/                         | \\\"\\\\/",
        "\\u007f\\u2028\\u2029\\u0041        | \u007f\u2028\u2029A",
      })
  void escapes(String written, String text) {
    assertThat(canonical(read('"' + written + '"'))).isEqualTo('"' + text + '"');
  }

  @Test
  void oneNumberIsWrittenInOneWay() {
    assertThat(canonical(read("4.0"))).isEqualTo(canonical(read("4")));
    assertThat(canonical(read("4e0"))).isEqualTo(canonical(read("4")));
    assertThat(canonical(read("-0"))).isEqualTo(canonical(read("0")));
    assertThat(canonical(read("9007199254740993"))).isEqualTo("9007199254740992");
  }

  @Test
  void numbersComeBackAsTheyWere() {
    SplittableRandom random = new SplittableRandom(8785);
    for (int i = 0; i < 20_000; i++) {
      double number = Double.longBitsToDouble(random.nextLong());
      if (Double.isFinite(number)) {
        String text = canonical(JsonNodeFactory.instance.numberNode(number));
        assertThat(Double.parseDouble(text)).as(text).isEqualTo(number + 0.0);
        assertThat(text).doesNotContain("E").doesNotEndWith(".0");
      }
    }
  }

  /** Numbers and texts are no canonical bodies by themselves; in a list they are. */
  private static String canonical(JsonNode node) {
    String list = CanonicalJson.of(JsonNodeFactory.instance.arrayNode().add(node));
    return list.substring(1, list.length() - 1);
  }

  private static JsonNode read(String json) {
    try {
      return JSON.readTree(json);
    } catch (IOException e) {
      throw new UncheckedIOException(json, e);
    }
  }
}
