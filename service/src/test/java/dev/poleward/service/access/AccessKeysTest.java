package dev.poleward.service.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import dev.poleward.domain.event.ClubEvent.AccessKeyIssued;
import dev.poleward.domain.event.ClubEvent.AccessKeyRevoked;
import dev.poleward.service.access.Issuance.Issued;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AccessKeysTest {

  private static final Authentication UNKNOWN = new Authentication.Unknown();

  private final RecordedClubs clubs = new RecordedClubs();
  private final Randomness randomness = new SeededRandomness(11);

  @TempDir Path folder;
  private AccessKeys keys;
  private String hostKey = "";

  @BeforeEach
  void start() throws IOException {
    Path file = folder.resolve("host.key");
    keys = new AccessKeys(clubs, HostKey.open(file, randomness), randomness, Duration.ofSeconds(1));
    hostKey = Files.readString(file);
  }

  private Issued issued(String club, KeyRequest request) {
    return (Issued) keys.issue(club, request);
  }

  private String recorded(String club, KeyRequest request) {
    Issued issued = issued(club, request);
    clubs.given(club, issued.event());
    return issued.text().written();
  }

  private static KeyRequest reader(String key) {
    return new KeyRequest(key, Set.of(Scope.RECORDS_READ), null, null);
  }

  @Test
  void theHostKeyIsTheHosts() {
    assertThat(keys.authenticate(hostKey)).isEqualTo(new HostIdentity());
    assertThat(keys.authenticate(hostKey.substring(0, hostKey.length() - 1) + '_'))
        .isEqualTo(new Authentication.Malformed());
    char last = hostKey.charAt(hostKey.length() - 1);
    assertThat(
            keys.authenticate(
                hostKey.substring(0, hostKey.length() - 1) + (last == 'a' ? 'b' : 'a')))
        .isEqualTo(UNKNOWN);
  }

  @Test
  void aClubsKeySaysWhatItOpens() {
    String first = recorded("salt_marsh", KeyRequest.first());
    String pupils =
        recorded(
            "salt_marsh",
            new KeyRequest(
                "phone-1", Set.of(Scope.RECORDS_WRITE), Set.of("juniper"), "Inês's phone"));

    assertThat(keys.authenticate(first))
        .isInstanceOfSatisfying(
            ClubIdentity.class,
            identity -> {
              assertThat(identity.club()).isEqualTo("salt_marsh");
              assertThat(identity.scopes()).isEqualTo(Scope.OF_CLUBS);
              assertThat(identity.dogs()).isEmpty();
            });
    assertThat(keys.authenticate(pupils))
        .isEqualTo(
            new ClubIdentity(
                "salt_marsh",
                "phone-1",
                Set.of(Scope.RECORDS_WRITE),
                Optional.of(Set.of("juniper"))));
  }

  @Test
  void nobodyIsToldWhetherTheKeyTheSecretOrTheClubIsUnknown() {
    String text = recorded("saltmarsh", reader("k1"));
    String secret = text.substring(text.length() - 43);

    assertThat(keys.authenticate("pw_saltmarsh_k1_" + "x".repeat(43))).isEqualTo(UNKNOWN);
    assertThat(keys.authenticate("pw_saltmarsh_k2_" + secret)).isEqualTo(UNKNOWN);
    assertThat(keys.authenticate("pw_dunes_k1_" + secret)).isEqualTo(UNKNOWN);
    assertThat(keys.authenticate("pw_saltmarsh_k1_" + secret)).isInstanceOf(ClubIdentity.class);
  }

  @Test
  void aRevokedKeyStopsWorkingAtOnceAndForGood() {
    String text = recorded("saltmarsh", reader("k1"));
    assertThat(keys.authenticate(text)).isInstanceOf(ClubIdentity.class);

    clubs.given("saltmarsh", new AccessKeyRevoked("k1"));
    assertThat(keys.authenticate(text)).isEqualTo(UNKNOWN);

    String again = recorded("saltmarsh", reader("k1"));
    assertThat(keys.authenticate(again)).isEqualTo(UNKNOWN);
    assertThat(keys.authenticate(text)).isEqualTo(UNKNOWN);
  }

  @Test
  void ofTwoKeysOfOneIdTheFirstStands() {
    String first = recorded("saltmarsh", reader("k1"));
    String second = recorded("saltmarsh", reader("k1"));

    assertThat(keys.authenticate(first)).isInstanceOf(ClubIdentity.class);
    assertThat(keys.authenticate(second)).isEqualTo(UNKNOWN);
  }

  @Test
  void aKeyIssuedThroughAnotherNodeWorksHere() {
    Issued issued = issued("saltmarsh", reader("k1"));
    clubs.givenElsewhere("saltmarsh", issued.event());

    assertThat(keys.authenticate(issued.text().written())).isInstanceOf(ClubIdentity.class);
    keys.authenticate(issued.text().written());
    assertThat(clubs.catchUps()).as("a key that is known is not waited for").isEqualTo(1);
  }

  @Test
  void aNodeThatIsBehindDoesNotCallAKeyUnknown() {
    Issued issued = issued("saltmarsh", reader("k1"));
    clubs.givenElsewhere("saltmarsh", issued.event());
    clubs.canCatchUp(false);

    assertThat(keys.authenticate(issued.text().written()))
        .isEqualTo(new Authentication.Undecided());
  }

  @Test
  void aClubMayBeCalledHostAndIsNoHost() {
    String text = recorded("host", KeyRequest.first());

    assertThat(keys.authenticate(text))
        .isInstanceOfSatisfying(
            ClubIdentity.class, identity -> assertThat(identity.club()).isEqualTo("host"));
  }

  @Test
  void scopesThatTheJournalShouldNotHoldOpenNothing() {
    Issued issued = issued("saltmarsh", reader("k1"));
    clubs.given(
        "saltmarsh",
        new AccessKeyIssued(
            "k1", List.of("host", "moon:visit"), null, null, issued.event().hash()));

    assertThat(keys.authenticate(issued.text().written()))
        .isEqualTo(new ClubIdentity("saltmarsh", "k1", Set.of(), Optional.empty()));
  }

  @Test
  void theSecretIsNowhereKept() {
    Issued issued = issued("saltmarsh", KeyRequest.first());
    String secret = issued.text().secret();

    assertThat(issued.event().toString()).doesNotContain(secret);
    assertThat(issued.toString()).doesNotContain(secret);
    assertThat(issued.event().hash()).isEqualTo(SecretHash.of(secret));
    assertThat(issued.event().scopes())
        .containsExactly("records:write", "records:read", "timing:push", "club:manage");
    // FIPS 180-4, the example for a message of one block.
    assertThat(SecretHash.of("abc"))
        .isEqualTo("sha256:ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }

  @Test
  void keysThatCannotBeAreRefused() {
    assertThat(
            List.of(
                new KeyRequest("k", Set.of(), null, null),
                new KeyRequest("k", Set.of(Scope.HOST), null, null),
                new KeyRequest("k", Set.of(Scope.CLUB_MANAGE), Set.of("juniper"), null),
                new KeyRequest("k_1", Set.of(Scope.RECORDS_READ), null, null)))
        .extracting(request -> keys.issue("saltmarsh", request))
        .allSatisfy(answer -> assertThat(answer).isInstanceOf(Issuance.Refused.class))
        .extracting(answer -> ((Issuance.Refused) answer).member())
        .containsExactly("scopes", "scopes", "dogs", "key");
  }

  @Test
  void aWishThatComesAgainIsRecognised() {
    KeyRequest wish = new KeyRequest(null, Set.of(Scope.RECORDS_READ), Set.of("juniper"), "label");
    AccessKeyIssued led = issued("saltmarsh", wish).event();

    assertThat(wish.ledTo(led)).isTrue();
    assertThat(wish.ledTo(issued("saltmarsh", wish).event())).isTrue();
    assertThat(reader("k1").ledTo(led)).isFalse();
    assertThat(new KeyRequest("other", wish.scopes(), wish.dogs(), wish.label()).ledTo(led))
        .isFalse();
  }

  @Test
  void anyTextIsAnswered() {
    String text = recorded("salt_marsh", reader("k1"));
    long seed = new Random().nextLong();
    Random random = new Random(seed);
    for (int round = 0; round < 5_000; round++) {
      String mangled = AccessKeyTextTest.mangled(random, random.nextBoolean() ? text : hostKey);
      assertThatCode(
              () -> {
                Authentication answer = keys.authenticate(mangled);
                if (!mangled.equals(text) && !mangled.equals(hostKey)) {
                  assertThat(answer).isNotInstanceOf(Authentication.Identity.class);
                }
              })
          .as("seed %d", seed)
          .doesNotThrowAnyException();
    }
  }
}
