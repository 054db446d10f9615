package dev.poleward.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import dev.poleward.service.CommandLine.Faulty;
import dev.poleward.service.CommandLine.Understood;
import dev.poleward.service.http.HttpSettings;
import dev.poleward.service.http.HttpSettings.Encryption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every default, every option and every fault of the command line. */
class CommandLineTest {

  @TempDir private Path folder;

  private static Settings understood(String... words) {
    return switch (CommandLine.read(List.of(words))) {
      case Understood(Settings settings) -> settings;
      case Faulty(List<String> faults) -> fail("refused: " + faults);
    };
  }

  private static List<String> faults(String... words) {
    return switch (CommandLine.read(List.of(words))) {
      case Understood _ -> List.of();
      case Faulty(List<String> faults) -> faults;
    };
  }

  @Test
  void nothingSaidIsEnough() {
    assertThat(understood())
        .isEqualTo(
            new Settings(
                Path.of("data"),
                new HttpSettings("127.0.0.1", 8080, new Encryption.None()),
                Optional.empty(),
                0,
                Optional.empty(),
                Optional.empty(),
                512L * 1_024 * 1_024));
  }

  @Test
  void everythingLiesBelowTheFolder() {
    Settings settings = understood("--data", "elsewhere");

    assertThat(settings.data()).isEqualTo(Path.of("elsewhere"));
    assertThat(settings.hostKey()).isEqualTo(Path.of("elsewhere/host.key"));
    assertThat(settings.masterKey()).isEqualTo(Path.of("elsewhere/master.key"));
    assertThat(settings.journal()).isEqualTo(Path.of("elsewhere/journal"));
  }

  @Test
  void everyOptionIsUnderstood() throws IOException {
    Path keyStore = Files.writeString(folder.resolve("club.p12"), "not looked into yet");
    Path password = Files.writeString(folder.resolve("password"), "  very secret\n");

    Settings settings =
        understood(
            "--data", "d",
            "--port", "9443",
            "--listen", "0.0.0.0",
            "--tls", keyStore.toString(),
            "--tls-password-file", password.toString(),
            "--kafka-port", "9092",
            "--host-key-file", "h",
            "--master-key-file", "m",
            "--min-free-mib", "1024");

    assertThat(settings)
        .isEqualTo(
            new Settings(
                Path.of("d"),
                new HttpSettings("0.0.0.0", 9_443, new Encryption.Here(keyStore, "very secret")),
                Optional.empty(),
                9_092,
                Optional.of(Path.of("h")),
                Optional.of(Path.of("m")),
                1L << 30));
    assertThat(settings.hostKey()).isEqualTo(Path.of("h"));
    assertThat(settings.masterKey()).isEqualTo(Path.of("m"));
  }

  @Test
  void aClusterTakesThePlaceOfTheBrokerInside() {
    assertThat(understood("--kafka", "one:9092,two:9092").kafka()).contains("one:9092,two:9092");
    assertThat(faults("--kafka", "one:9092", "--kafka-port", "9092"))
        .singleElement()
        .asString()
        .startsWith("--kafka-port");
  }

  @Test
  void anotherMayEncrypt() {
    assertThat(understood("--listen", "0.0.0.0", "--tls", "elsewhere").http())
        .isEqualTo(new HttpSettings("0.0.0.0", 8080, new Encryption.Elsewhere()));
    assertThat(faults("--tls", "elsewhere", "--tls-password-file", "p"))
        .containsExactly("--tls-password-file goes with a file in --tls");
    assertThat(faults("--tls-password-file", "p"))
        .containsExactly("--tls-password-file goes with a file in --tls");
  }

  @Test
  void valuesMayStandBehindAnEqualsSign() {
    assertThat(understood("--port=0", "--data=--odd=name").http().port()).isZero();
    assertThat(understood("--data=--odd=name").data()).isEqualTo(Path.of("--odd=name"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.0.0.0", "::", "192.0.2.7", "no-such-host.invalid"})
  void otherMachinesNeedEncryption(String address) {
    assertThat(faults("--listen", address))
        .containsExactly(
            "--listen " + address + " needs --tls: access keys must not travel in the open");
  }

  @ParameterizedTest
  @ValueSource(strings = {"127.0.0.1", "127.1.2.3", "::1", "localhost"})
  void thisMachineDoesNot(String address) {
    assertThat(understood("--listen", address).http().host()).isEqualTo(address);
  }

  @ParameterizedTest
  @CsvSource({
    "--port, -1, 65535",
    "--port, 65536, 65535",
    "--port, eighty, 65535",
    "--port, 8080.0, 65535",
    "--port, 99999999999999999999, 65535",
    "--kafka-port, 65536, 65535",
    "--min-free-mib, -1, 1048576",
    "--min-free-mib, 1048577, 1048576"
  })
  void numbersHaveBounds(String option, String value, String most) {
    assertThat(faults(option, value))
        .containsExactly(
            "%s must be a whole number from 0 to %s, not %s".formatted(option, most, value));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--data",
        "--port",
        "--listen",
        "--tls",
        "--tls-password-file",
        "--kafka",
        "--kafka-port",
        "--host-key-file",
        "--master-key-file",
        "--min-free-mib"
      })
  void everyOptionNeedsOneValue(String option) {
    assertThat(faults(option)).contains(option + " needs a value");
    assertThat(faults(option + "=")).contains(option + " needs a value");
    assertThat(faults(option, "--port", "1")).contains(option + " needs a value");
    assertThat(faults(option, "1", option, "2")).contains(option + " is given twice");
    assertThat(Help.TEXT).contains(option + " ");
  }

  @Test
  void filesAreLookedAt() throws IOException {
    Path keyStore = Files.writeString(folder.resolve("club.p12"), "x");

    assertThat(faults("--tls", keyStore.toString()))
        .containsExactly("--tls with a file needs --tls-password-file");
    assertThat(faults("--tls", keyStore.toString(), "--listen", "0.0.0.0"))
        .containsExactly("--tls with a file needs --tls-password-file");
    assertThat(faults("--tls", "none.p12", "--tls-password-file", "none.txt"))
        .containsExactlyInAnyOrder(
            "--tls none.p12 cannot be read", "--tls-password-file none.txt cannot be read");
    assertThat(faults("--data", "a\0b")).singleElement().asString().startsWith("--data is no path");
  }

  @Test
  void allFaultsAreToldAtOnce() {
    assertThat(
            faults(
                "--prot",
                "--port=x",
                "stray",
                "--listen",
                "0.0.0.0",
                "--kafka",
                "k:1",
                "--kafka-port",
                "1",
                "--min-free-mib",
                "-5",
                "--data"))
        .containsExactlyInAnyOrder(
            "--prot is not known; see: poleward help",
            "stray is not known; see: poleward help",
            "--data needs a value",
            "--port must be a whole number from 0 to 65535, not x",
            "--listen 0.0.0.0 needs --tls: access keys must not travel in the open",
            "--min-free-mib must be a whole number from 0 to 1048576, not -5",
            "--kafka-port is for the embedded broker, which --kafka leaves out");
  }
}
