package dev.poleward.service.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PermissionTest {

  private static final HostIdentity HOST = new HostIdentity();
  private static final ClubIdentity READER =
      new ClubIdentity("saltmarsh", "k", Set.of(Scope.RECORDS_READ), Optional.empty());
  private static final ClubIdentity PUPIL =
      new ClubIdentity("saltmarsh", "p", Scope.OF_CLUBS, Optional.of(Set.of("juniper")));

  @Test
  void oneOfTheScopesSuffices() {
    assertThat(Permission.toRead(READER, "saltmarsh")).isEqualTo(new Permission.Granted());
    assertThat(Permission.of(READER, "saltmarsh", Set.of(Scope.RECORDS_READ, Scope.RECORDS_WRITE)))
        .isEqualTo(new Permission.Granted());
  }

  @Test
  void aMissingScopeIsNamed() {
    assertThat(Permission.of(READER, "saltmarsh", Set.of(Scope.CLUB_MANAGE)))
        .isEqualTo(new Permission.ScopeMissing(Set.of(Scope.CLUB_MANAGE)));
  }

  @Test
  void anotherClubIsNoneOfItsBusinessWhateverTheScopes() {
    assertThat(Permission.of(PUPIL, "dunes", Scope.OF_CLUBS)).isEqualTo(new Permission.OtherClub());
    assertThat(Permission.of(READER, "dunes", Set.of(Scope.CLUB_MANAGE)))
        .isEqualTo(new Permission.OtherClub());
  }

  @Test
  void theHostMayDoEverythingInEveryClub() {
    assertThat(Permission.of(HOST, "dunes", Set.of(Scope.TIMING_PUSH)))
        .isEqualTo(new Permission.Granted());
    assertThat(Permission.asHost(HOST)).isTrue();
    assertThat(Permission.asHost(PUPIL)).isFalse();
    assertThat(Permission.mayTouch(HOST, "any")).isTrue();
    assertThat(Permission.mayTouchEveryDog(HOST)).isTrue();
  }

  @Test
  void aPupilsKeyTouchesItsDogsOnly() {
    assertThat(Permission.mayTouch(PUPIL, "juniper")).isTrue();
    assertThat(Permission.mayTouch(PUPIL, "bracken")).isFalse();
    assertThat(Permission.mayTouchEveryDog(PUPIL)).isFalse();
    assertThat(Permission.mayTouch(READER, "bracken")).isTrue();
    assertThat(Permission.mayTouchEveryDog(READER)).isTrue();
  }
}
