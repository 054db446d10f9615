package dev.poleward.service.codec;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Ids are what the contract's pattern says. */
class IdsTest {

  private static final Pattern CONTRACT = Pattern.compile("(?!\\.{1,2}$)[A-Za-z0-9._~-]{1,64}");

  @Test
  void everyCharacterIsTakenOrRefusedAsTheContractSays() {
    for (int each = Character.MIN_VALUE; each <= Character.MAX_VALUE; each++) {
      String text = String.valueOf((char) each);

      assertThat(Ids.isId(text)).as("U+%04X", each).isEqualTo(CONTRACT.matcher(text).matches());
      assertThat(Ids.isId("a" + text + "b")).isEqualTo(Ids.isRecordedId(text));
    }
  }

  @Test
  void stepsOfAPathAreNone() {
    assertThat(Ids.isId(".")).isFalse();
    assertThat(Ids.isId("..")).isFalse();
    assertThat(Ids.isId("...")).isTrue();
    assertThat(Ids.isId(".a")).isTrue();
    assertThat(Ids.isRecordedId("..")).isTrue();
  }

  @Test
  void theyHaveOneToSixtyFourCharacters() {
    assertThat(Ids.isId("")).isFalse();
    assertThat(Ids.isId("x")).isTrue();
    assertThat(Ids.isId("x".repeat(64))).isTrue();
    assertThat(Ids.isId("x".repeat(65))).isFalse();
  }
}
