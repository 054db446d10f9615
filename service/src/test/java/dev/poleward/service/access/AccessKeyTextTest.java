package dev.poleward.service.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AccessKeyTextTest {

  private static final String SECRET = "s".repeat(43);
  private static final String CLUB_ID =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789._~-";

  @Test
  void isReadFromBehindBecauseClubsMayHoldUnderscores() {
    assertThat(AccessKeyText.parse("pw_salt_marsh__phone-1_" + SECRET))
        .contains(new AccessKeyText("salt_marsh_", "phone-1", SECRET));
  }

  @Test
  void comesBackFromItsWrittenFormWhateverTheClub() {
    long seed = new Random().nextLong();
    Random random = new Random(seed);
    Randomness randomness = new SeededRandomness(seed);
    for (int round = 0; round < 2_000; round++) {
      String club = drawn(random, CLUB_ID, 1 + random.nextInt(64));
      AccessKeyText key =
          AccessKeyText.drawn(club, AccessKeyText.drawnKeyId(randomness), randomness);

      assertThat(AccessKeyText.parse(key.written())).as("seed %d", seed).contains(key);
    }
  }

  @Test
  void secretsAreLettersAndDigitsOfOneLength() {
    assertThat(LettersAndDigits.written(new byte[32])).isEqualTo("0".repeat(43));
    byte[] most = new byte[32];
    java.util.Arrays.fill(most, (byte) -1);
    assertThat(LettersAndDigits.written(most)).matches("[0-9A-Za-z]{43}");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "pw_",
        "pw___",
        "pw_club_key_short",
        "pw_cl ub_key_sssssssssssssssssssssssssssssssssssssssssss",
        "pw_club_sssssssssssssssssssssssssssssssssssssssssss",
        "PW_club_key_sssssssssssssssssssssssssssssssssssssssssss",
        "pw_club_key_sssssssssssssssssssssssssssssssssssssssssss\n",
        "pw_club_key_ssssssssssssssssssssssssssssssssssssssssss-"
      })
  void refusesWhatIsNoKey(String text) {
    assertThat(AccessKeyText.parse(text)).isEmpty();
  }

  @Test
  void refusesLongTextsWithoutReadingThem() {
    assertThat(AccessKeyText.parse("pw_" + "a_".repeat(5_000_000))).isEmpty();
  }

  @Test
  void anyTextIsReadOrRefused() {
    long seed = new Random().nextLong();
    Random random = new Random(seed);
    for (int round = 0; round < 20_000; round++) {
      String text = mangled(random, "pw_salt_marsh_phone-1_" + SECRET);

      assertThatCode(
              () ->
                  AccessKeyText.parse(text)
                      .ifPresent(key -> assertThat(key.written()).isEqualTo(text)))
          .as("seed %d", seed)
          .doesNotThrowAnyException();
    }
  }

  /** The form as the contract says it; greedy, so that the parts are told from behind. */
  @Test
  void readsJustWhatHasTheForm() {
    Pattern form =
        Pattern.compile("pw_([A-Za-z0-9._~-]{1,64})_([A-Za-z0-9.~-]{1,64})_([A-Za-z0-9]{32,128})");
    long seed = new Random().nextLong();
    Random random = new Random(seed);
    for (int round = 0; round < 20_000; round++) {
      int length = random.nextInt(4) == 0 ? 30 + random.nextInt(100) : 43;
      String text = mangled(random, "pw_salt_marsh_phone-1_" + "s".repeat(length));
      Matcher parts = form.matcher(text);

      assertThat(AccessKeyText.parse(text))
          .as("seed %d", seed)
          .isEqualTo(
              parts.matches()
                  ? Optional.of(new AccessKeyText(parts.group(1), parts.group(2), parts.group(3)))
                  : Optional.empty());
    }
  }

  @Test
  void doesNotShowItsSecretInLogs() {
    assertThat(new AccessKeyText("club", "key", SECRET).toString()).doesNotContain(SECRET);
  }

  /** A text with some characters changed, taken out or put in: any characters. */
  static String mangled(Random random, String text) {
    StringBuilder mangled = new StringBuilder(text);
    for (int changes = random.nextInt(6); changes > 0; changes--) {
      int at = random.nextInt(mangled.length() + 1);
      char any = random.nextBoolean() ? (char) random.nextInt(0x10000) : '_';
      switch (random.nextInt(3)) {
        case 0 -> mangled.insert(at, any);
        case 1 -> mangled.setLength(at);
        default -> mangled.replace(at, Math.min(at + 1, mangled.length()), String.valueOf(any));
      }
    }
    return mangled.toString();
  }

  private static String drawn(Random random, String alphabet, int length) {
    return random
        .ints(length, 0, alphabet.length())
        .mapToObj(alphabet::charAt)
        .map(String::valueOf)
        .reduce("", String::concat);
  }
}
