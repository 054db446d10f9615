package dev.poleward.service.contract;

import static dev.poleward.service.contract.Events.CONTRACT;
import static dev.poleward.service.contract.Events.bytes;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** JSON as RFC 8259 has it, and what two readers could understand differently refused. */
class ReadingTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        " [1, -0, 1e300, 0.1] \n",
        "\"\\ud83d\\udc15 \\\\ud800 \\u00e9\"",
        "null",
        "5"
      })
  void json(String text) {
    assertThat(CONTRACT.parse(bytes(text))).isInstanceOf(ParsedBody.Parsed.class);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"a\":1,\\n \"a\":2}   | line 2, column 5: Duplicate",
        "{\"a\":{\"b\":1,\"b\":2}} | Duplicate",
        "{\"a\":1e999}            | a number beyond all bounds at line 1, column 6",
        "{\"a\":-1e999}           | a number beyond all bounds at line 1, column 6",
        "[\"\\ud800\"]            | half a surrogate pair at line 1, column 3",
        "[\"\\udc15\\ud83d\"]     | half a surrogate pair at line 1, column 3",
        "{\"\\ud83dx\":1}         | line 1, column 9: Broken surrogate pair",
        "{} {}                    | goes on after its end, at line 1, column 4",
        "{}}                      | line 1, column 3",
        "{\"a\":                  | ends too early, at line 1, column 6",
        "[1,\\n nul]              | line 2, column 2",
        "NaN                      | is not JSON at line 1, column 4: Non-standard token 'NaN'",
        "[01]                     | line 1",
        "{'a':1}                  | line 1, column 2",
        "[1,]                     | line 1, column 4",
        "\\ufeff{}                | line 1, column 1",
      })
  void noJson(String text, String detail) {
    assertThat(detailOf(bytes(text.replace("\\n", "\n").replace("\\ufeff", "\ufeff"))))
        .contains(detail);
  }

  @Test
  void nothing() {
    assertThat(detailOf(new byte[0])).isEqualTo("is empty; JSON is expected");
    assertThat(detailOf(bytes(" \n"))).isEqualTo("is empty; JSON is expected");
  }

  @Test
  void otherEncodings() {
    assertThat(detailOf("{}".getBytes(StandardCharsets.UTF_16LE))).contains("is not JSON");
    assertThat(detailOf("[\"é\"]".getBytes(StandardCharsets.ISO_8859_1))).isEqualTo("is not UTF-8");
    // A slash in two bytes, and half a surrogate pair in three.
    assertThat(detailOf(new byte[] {'"', (byte) 0xc0, (byte) 0xaf, '"'})).isEqualTo("is not UTF-8");
    assertThat(detailOf(new byte[] {'"', (byte) 0xed, (byte) 0xa0, (byte) 0x80, '"'}))
        .isEqualTo("is not UTF-8");
  }

  @Test
  void nestingEndsAtSixtyFour() {
    assertThat(CONTRACT.parse(bytes("[".repeat(64) + "]".repeat(64))))
        .isInstanceOf(ParsedBody.Parsed.class);
    assertThat(detailOf(bytes("[".repeat(65) + "]".repeat(65)))).contains("deeper than 64 levels");
    assertThat(detailOf(bytes("[".repeat(1 << 20)))).contains("deeper than 64 levels");
  }

  @Test
  void namesOfManyCharacters() {
    assertThat(detailOf(bytes("{\"" + "a".repeat(2_000) + "\":1}")))
        .contains("a name of more than 512 characters");
  }

  @Test
  void numbersOfManyDigits() {
    assertThat(detailOf(bytes("1".repeat(400)))).contains("a number beyond all bounds");
    assertThat(detailOf(bytes("1".repeat(100_000)))).contains("a number of more than 1000 digits");
  }

  private static String detailOf(byte[] body) {
    return switch (CONTRACT.parse(body)) {
      case ParsedBody.Parsed parsed -> "read as " + parsed.tree();
      case ParsedBody.Unreadable unreadable -> {
        assertThat(unreadable.faults()).extracting(Fault::pointer).containsExactly("");
        yield unreadable.faults().getFirst().detail();
      }
    };
  }
}
