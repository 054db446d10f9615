package dev.poleward.service.contract;

import static dev.poleward.service.contract.Events.accepted;
import static dev.poleward.service.contract.Events.event;
import static dev.poleward.service.contract.Events.faults;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What becomes of an event that is in order. */
class AcceptedTest {

  private static final String CLOSED = "{'session':'s-1'}";
  private static final String USUAL = "'id':'e-1','source':'/a','time':'2026-05-04T18:02:11+01:00'";

  @Test
  void attributesAreKeptAsSaid() {
    SentEvent event =
        accepted(
            event(
                "session.closed.v1",
                CLOSED,
                USUAL
                    + ",'subject':'s','dataschema':'urn:a:b','datacontenttype':'application/json',"
                    + "'text':'x','whole':4.0,'truth':false"));

    assertThat(event.type()).isEqualTo("session.closed.v1");
    assertThat(event.data().toString()).isEqualTo("{\"session\":\"s-1\"}");
    assertThat(event.recordedTime()).isNull();
    assertThat(event.forgotten()).isFalse();
    assertThat(event.envelope().id()).isEqualTo("e-1");
    assertThat(event.envelope().source()).isEqualTo("/a");
    assertThat(event.envelope().subject()).isEqualTo("s");
    assertThat(event.envelope().dataschema()).isEqualTo("urn:a:b");
    assertThat(event.envelope().time())
        .isEqualTo(OffsetDateTime.parse("2026-05-04T18:02:11+01:00"));
    assertThat(event.envelope().extensions())
        .isEqualTo(Map.of("text", "x", "whole", 4L, "truth", false));
  }

  @Test
  void nullCountsAsLeftOut() {
    SentEvent event =
        accepted(
            event(
                "session.closed.v1",
                CLOSED,
                USUAL
                    + ",'subject':null,'dataschema':null,'datacontenttype':null,'ext':null,"
                    + "'recordedtime':null,'forgotten':null"));

    assertThat(event.envelope().subject()).isNull();
    assertThat(event.envelope().dataschema()).isNull();
    assertThat(event.envelope().extensions()).isEmpty();
    assertThat(event.recordedTime()).isNull();
    assertThat(event.forgotten()).isFalse();
  }

  @Test
  void whatTheServiceOwnsIsNoExtension() {
    SentEvent event =
        accepted(
            event(
                "session.closed.v1",
                CLOSED,
                USUAL + ",'recordedtime':'2026-05-04T18:02:12.5+01:00','forgotten':false"));

    assertThat(event.envelope().extensions()).isEmpty();
    assertThat(event.recordedTime()).isEqualTo(Instant.parse("2026-05-04T17:02:12.5Z"));
  }

  @Test
  void whatWasForgottenElsewhereComesInWithoutItsPersonalMembers() {
    String forgotten = USUAL + ",'forgotten':true";

    assertThat(accepted(event("handler.registered.v1", "{'handler':'h'}", forgotten)).forgotten())
        .isTrue();
    assertThat(faults(event("rep.amended.v1", "{'rep':'r'}", forgotten))).isEmpty();
    assertThat(faults(event("rep.amended.v1", "{'rep':'r','drive':1}", forgotten))).isEmpty();
    assertThat(faults(event("session.closed.v1", CLOSED, forgotten))).isEmpty();
  }

  @Test
  void beingForgottenExcusesNothingElse() {
    String forgotten = USUAL + ",'forgotten':true";

    assertThat(faults(event("handler.registered.v1", "{'handler':'h','email':'a@b'}", forgotten)))
        .containsExactly(new Fault("/data/name", "is required"));
    assertThat(faults(event("handler.registered.v1", "{}", forgotten)))
        .containsExactly(new Fault("/data/handler", "is required"));
    assertThat(faults(event("rep.amended.v1", "{'rep':'r'}", USUAL + ",'forgotten':false")))
        .containsExactly(new Fault("/data", "must say more than rep"));
  }
}
