package dev.poleward.service.projection;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.record.Sealed;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What counts as the same content under one id. */
class ContentHashTest {

  private static final Sealed BOX = new Sealed("ines", "k-1", "Ym94");
  private static final Sealed OTHER_BOX = new Sealed("ines", "k-1", "b3RoZXI");
  private static final Sealed DROPPED = Sealed.dropped("ines");

  private static boolean same(Sent one, Sent other) {
    boolean same = ContentHash.same(ContentHash.of(one.entry()), ContentHash.of(other.entry()));
    assertThat(ContentHash.same(ContentHash.of(other.entry()), ContentHash.of(one.entry())))
        .isEqualTo(same);
    return same;
  }

  private static Sent trial(String data) {
    return Sent.event("e-1").says("trial.run.v1", data);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-05-04T17:02:11Z",
        "2026-05-04T17:02:11.000Z",
        "2026-05-04T19:02:11+02:00",
        "2026-05-04T13:32:11-03:30"
      })
  void theSameInstantInAnotherOffsetIsTheSame(String time) {
    assertThat(same(Sent.event("e-1"), Sent.event("e-1").at(time))).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"2026-05-04T18:02:11Z", "2026-05-04T18:02:11.000000001+01:00"})
  void anotherInstantIsNot(String time) {
    assertThat(same(Sent.event("e-1"), Sent.event("e-1").at(time))).isFalse();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'dog':'juniper','poles':4}  | {'dog':'juniper','poles':4.0}",
        "{'dog':'juniper','poles':4}  | {'poles':4,'dog':'juniper'}",
        "{'dog':'juniper','poles':40} | {'dog':'juniper','poles':4e1}",
        "{'dog':'jun\\u0069per'}      | {'dog':'juniper'}",
        "{'seconds':0.5}              | {'seconds':5e-1}"
      })
  void theSameDataWrittenOtherwiseIsTheSame(String one, String other) {
    assertThat(same(trial(one), trial(other))).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'dog':'juniper','poles':4} | {'dog':'juniper','poles':'4'}",
        "{'dog':'juniper'}           | {'dog':'Juniper'}",
        "{'dog':'juniper'}           | {'dog':'juniper','atPole':null}",
        "{'drills':[1,2]}            | {'drills':[2,1]}"
      })
  void otherDataIsNot(String one, String other) {
    assertThat(same(trial(one), trial(other))).isFalse();
  }

  @Test
  void anotherTypeIsNotTheSame() {
    Sent registered = Sent.event("e-1");

    assertThat(same(registered, registered.says("dog.amended.v1", registered.data()))).isFalse();
  }

  @Test
  void whoSaysItAndWhenItWasRecordedMakesNoDifference() {
    assertThat(same(Sent.event("e-1"), Sent.event("e-1").recordedGiven("09:00:00"))).isTrue();
    assertThat(same(Sent.event("e-1"), Sent.event("e-1").of("another"))).isTrue();
  }

  @Test
  void personalMembersAreComparedByTheirBox() {
    Sent bare = Sent.event("e-1");

    assertThat(same(bare.with(BOX), bare.with(BOX))).isTrue();
    assertThat(same(bare.with(BOX), bare.with(OTHER_BOX))).isFalse();
    assertThat(same(bare.with(BOX), bare)).isFalse();
  }

  @Test
  void whatWasDroppedForSomebodyForgottenIsNotCompared() {
    Sent bare = Sent.event("e-1");

    for (Sent other : List.of(bare.with(BOX), bare.with(OTHER_BOX), bare, bare.with(DROPPED))) {
      assertThat(same(bare.with(DROPPED), other)).isTrue();
      assertThat(same(bare.with(DROPPED), other.at("2026-01-01T00:00:00Z"))).isFalse();
    }
  }
}
