package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.poleward.service.http.HttpSettings.Encryption;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Access keys do not travel in the open, whoever asks for it. */
class HttpSettingsTest {

  private static final Encryption HERE = new Encryption.Here(Path.of("club.p12"), "very secret");

  @ParameterizedTest
  @ValueSource(strings = {"0.0.0.0", "::", "192.0.2.7", "2001:db8::1", "no-such-host.invalid"})
  void otherMachinesNeedEncryption(String host) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new HttpSettings(host, 8080, new Encryption.None()))
        .withMessageContaining("TLS");
    assertThatCode(() -> new HttpSettings(host, 8080, HERE)).doesNotThrowAnyException();
    assertThatCode(() -> new HttpSettings(host, 8080, new Encryption.Elsewhere()))
        .doesNotThrowAnyException();
  }

  @ParameterizedTest
  @ValueSource(strings = {"127.0.0.1", "127.0.0.9", "::1", "localhost"})
  void thisMachineDoesNot(String host) {
    assertThatCode(() -> new HttpSettings(host, 0, new Encryption.None()))
        .doesNotThrowAnyException();
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 65_536})
  void portsAreWithinBounds(int port) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new HttpSettings("127.0.0.1", port, new Encryption.None()));
  }

  @Test
  void thePasswordStaysOutOfLogs() {
    assertThat(new HttpSettings("0.0.0.0", 443, HERE).toString())
        .contains("club.p12")
        .doesNotContain("very secret");
  }
}
