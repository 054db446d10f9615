package dev.poleward.service.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScopeOfTypeTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "session.opened.v1",
        "session.attended.v1",
        "session.closed.v1",
        "setup.changed.v1",
        "rep.logged.v1",
        "rep.amended.v1",
        "event.withdrawn.v1",
        "trial.run.v1",
        "load.noted.v1",
        "homework.set.v1",
        "goal.set.v1"
      })
  void recordsAreForThoseWhoWriteRecords(String type) {
    assertThat(ScopeOfType.of(type)).isEqualTo(new ScopeOfType.AnyOf(Set.of(Scope.RECORDS_WRITE)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"timing.recorded.v1", "timing.paired.v1", "timing.unpaired.v1"})
  void timingsAreForTimersToo(String type) {
    assertThat(ScopeOfType.of(type))
        .isEqualTo(new ScopeOfType.AnyOf(Set.of(Scope.TIMING_PUSH, Scope.RECORDS_WRITE)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "club.settings-changed.v1",
        "ground.registered.v1",
        "handler.registered.v1",
        "dog.registered.v1",
        "dog.amended.v1",
        "dog.merged.v1",
        "dog.rested.v1",
        "dog.cleared.v1",
        "class.formed.v1",
        "class.joined.v1",
        "class.left.v1",
        "programme.published.v1",
        "programme.assigned.v1",
        "device.enrolled.v1",
        "device.assigned.v1",
        "unheard-of",
        ""
      })
  void theRestIsForThoseWhoManageTheClub(String type) {
    assertThat(ScopeOfType.of(type)).isEqualTo(new ScopeOfType.AnyOf(Set.of(Scope.CLUB_MANAGE)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "club.registered.v1",
        "access-key.issued.v1",
        "access-key.revoked.v1",
        "person.forgotten.v1",
        "plan.issued.v1"
      })
  void noScopeOpensTheDoorToWhatTheServiceWrites(String type) {
    assertThat(ScopeOfType.of(type))
        .isInstanceOfSatisfying(
            ScopeOfType.MadeBy.class,
            made -> assertThat(made.route()).containsPattern("/v1/clubs|its plans"));
  }

  @Test
  void scopesAreKnownByTheirNames() {
    assertThat(Scope.values())
        .allSatisfy(scope -> assertThat(Scope.ofWire(scope.wire())).contains(scope));
    assertThat(Scope.ofWire("RECORDS_READ")).isEmpty();
    assertThat(Scope.OF_CLUBS).hasSize(4).doesNotContain(Scope.HOST);
  }
}
