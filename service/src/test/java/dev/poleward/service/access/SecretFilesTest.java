package dev.poleward.service.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.service.access.MasterKey.WhenMissing;
import dev.poleward.service.journal.CannotStart;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The two files that must be kept from others, and kept at all. */
class SecretFilesTest {

  private final Randomness randomness = new SeededRandomness(7);

  @TempDir Path folder;

  private Path file() {
    return folder.resolve("data").resolve("some.key");
  }

  private void given(String text) throws IOException {
    Files.createDirectories(folder.resolve("data"));
    Files.writeString(file(), text);
  }

  @Test
  void theHostKeyIsMadeOnceForItsOwnerOnly() throws IOException {
    HostKey made = HostKey.open(file(), randomness);

    String text = Files.readString(file());
    assertThat(text).matches("pw_host_[A-Za-z0-9]{22}_[A-Za-z0-9]{43}");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file())))
        .isEqualTo("rw-------");
    try (var left = Files.list(folder.resolve("data"))) {
      assertThat(left).containsExactly(file());
    }
    AccessKeyText key = AccessKeyText.parse(text).orElseThrow();
    assertThat(made.is(key)).isTrue();
    assertThat(HostKey.open(file(), randomness).is(key)).isTrue();
    assertThat(made.toString()).doesNotContain(key.secret());
  }

  @Test
  void theHostKeyMayHaveWhiteSpaceAroundIt() throws IOException {
    String text = "pw_host_mine_" + "a".repeat(43);
    given("  " + text + "\n\n");

    assertThat(HostKey.open(file(), randomness).is(AccessKeyText.parse(text).orElseThrow()))
        .isTrue();
  }

  @Test
  void aStartThatDiedWhileWritingLeavesNothingInTheWay() throws IOException {
    given("");
    Files.move(file(), folder.resolve("data").resolve("some.key.new"));

    HostKey.open(file(), randomness);

    assertThat(Files.readString(file())).startsWith("pw_host_");
  }

  @Test
  void refusesAHostKeyThatIsNone() throws IOException {
    given("pw_saltmarsh_mine_" + "a".repeat(43));
    assertThatThrownBy(() -> HostKey.open(file(), randomness))
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining("host key")
        .hasMessageContaining(file().toString())
        .hasMessageNotContaining("aaaa");

    given("password");
    assertThatThrownBy(() -> HostKey.open(file(), randomness))
        .isInstanceOf(CannotStart.class)
        .hasMessageNotContaining("password");
  }

  @Test
  void refusesFilesThatHoldNothingOrCannotBeRead() throws IOException {
    given(" \n");
    assertThatThrownBy(() -> HostKey.open(file(), randomness)).hasMessageContaining("is empty");

    given("x".repeat(5000));
    assertThatThrownBy(() -> HostKey.open(file(), randomness)).hasMessageContaining("longer");

    Files.write(file(), new byte[] {(byte) 0xff, (byte) 0xfe});
    assertThatThrownBy(() -> HostKey.open(file(), randomness)).hasMessageContaining("is no text");

    assertThatThrownBy(() -> HostKey.open(folder, randomness))
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining("cannot be read");
    assertThatThrownBy(() -> HostKey.open(file().resolve("below.key"), randomness))
        .isInstanceOf(CannotStart.class);
  }

  @Test
  void noticesAFileThatIsOpenToOthers() throws IOException {
    given("text");
    Files.setPosixFilePermissions(file(), PosixFilePermissions.fromString("rw-r-----"));
    assertThat(new SecretFile("key", file()).openTo()).contains("rw-r-----");

    Files.setPosixFilePermissions(file(), PosixFilePermissions.fromString("r--------"));
    assertThat(new SecretFile("key", file()).openTo()).isEmpty();
  }

  @Test
  void theMasterKeyOpensWhatItWrappedAlsoTomorrow() throws Exception {
    PersonKeyName name = PersonKeyName.parse("saltmarsh/ines/k1").orElseThrow();
    String wrapped = MasterKey.open(file(), WhenMissing.CREATE).newKey(name);

    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file())))
        .isEqualTo("rw-------");
    MasterKey.open(file(), WhenMissing.REFUSE).unwrap(name, wrapped);
    assertThat(wrapped.length()).isLessThan(300);
  }

  @Test
  void aWrappedKeyIsBoundToItsName() {
    MasterKey master = MasterKey.open(file(), WhenMissing.CREATE);
    String wrapped = master.newKey(PersonKeyName.parse("saltmarsh/ines/k1").orElseThrow());

    assertThatThrownBy(
            () -> master.unwrap(PersonKeyName.parse("saltmarsh/rui/k1").orElseThrow(), wrapped))
        .isInstanceOf(java.security.GeneralSecurityException.class);
  }

  @Test
  void aMissingMasterKeyIsNotReplacedWhereKeysMayHangOnIt() {
    assertThatThrownBy(() -> MasterKey.open(file(), WhenMissing.REFUSE))
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining("is missing")
        .hasMessageContaining(file().toString());
    assertThat(file()).doesNotExist();
  }

  @Test
  void refusesAMasterKeyThatIsNoneAndDoesNotQuoteIt() throws IOException {
    for (String text : new String[] {"letmein!", "bGV0bWVpbg"}) {
      given(text);
      assertThatThrownBy(() -> MasterKey.open(file(), WhenMissing.CREATE))
          .isInstanceOf(CannotStart.class)
          .hasMessageContaining("is not a master key")
          .hasMessageNotContaining(text)
          .hasNoCause();
    }
  }
}
