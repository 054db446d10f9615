package dev.poleward.domain.programme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** JSON of our own. */
class DocumentTextTest {

  @Test
  void everyKindOfValueIsRead() {
    assertThat(
            DocumentText.read(
                """
                { "text": "a \\"b\\" \\u00e9\\n", "whole": -7, "number": 0.5, "large": 1e3,
                  "yes": true, "no": false, "list": [1, [], {}], "object": { "in": "out" } }
                """))
        .isEqualTo(
            Map.of(
                "text",
                "a \"b\" é\n",
                "whole",
                -7L,
                "number",
                0.5,
                "large",
                1000.0,
                "yes",
                true,
                "no",
                false,
                "list",
                List.of(1L, List.of(), Map.of()),
                "object",
                Map.of("in", "out")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "[]",
        "{",
        "{\"a\":}",
        "{\"a\":1,}",
        "{\"a\":1}x",
        "{\"a\":1,\"a\":2}",
        "{\"a\":tru}",
        "{\"a\":\"b}",
        "{\"a\":\"\\x\"}",
        "{a:1}",
        "{\"a\":1-}"
      })
  void whatIsNoDocumentIsRefused(String text) {
    assertThatThrownBy(() -> DocumentText.read(text)).isInstanceOf(IllegalArgumentException.class);
  }
}
