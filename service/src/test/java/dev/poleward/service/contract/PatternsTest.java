package dev.poleward.service.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.regex.RegularExpression;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Patterns by table, against the library that knows every pattern. */
class PatternsTest {

  private static final List<String> ENDS = List.of("", "\n", "é", "🐕", " ", "a", "a".repeat(70));

  @ParameterizedTest
  @ValueSource(
      strings = {
        "^[A-Za-z0-9._~-]{1,64}$",
        "^(?!\\.{1,2}$)[A-Za-z0-9._~-]{1,64}$",
        "^[A-Za-z0-9.~-]{1,64}$",
        "^[a-z0-9]{1,20}$",
        "^[A-Za-z][A-Za-z0-9]{0,63}$",
        "^(([1-57-9]|1[0-2]):(00|30)|6:30)$",
      })
  void matchTheSame(String pattern) {
    RegularExpression quick = new Patterns().getRegularExpression(pattern);
    Pattern slow = Pattern.compile(pattern.replace("$", "\\z"));

    for (String dots : List.of(".", "..", "...", ".a", "..a", "a.", "a..")) {
      assertThat(quick.matches(dots)).as(dots).isEqualTo(slow.matcher(dots).find());
    }

    for (char each = 0; each < 0x180; each++) {
      for (String end : ENDS) {
        String text = each + end;
        assertThat(quick.matches(text)).as(text).isEqualTo(slow.matcher(text).find());
      }
    }
    assertThat(quick.matches("")).isEqualTo(slow.matcher("").find());
    for (int length = 1; length < 70; length++) {
      String text = "a".repeat(length);
      assertThat(quick.matches(text)).as(text).isEqualTo(slow.matcher(text).find());
    }
  }
}
