package dev.poleward.service.contract;

import static dev.poleward.service.contract.Events.CONTRACT;
import static dev.poleward.service.contract.Events.accepted;
import static dev.poleward.service.contract.Events.faults;
import static dev.poleward.service.contract.Events.tree;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Attributes as headers, as the HTTP binding of CloudEvents has them. */
class BinaryEventTest {

  private static final Map<String, String> USUAL =
      Map.of(
          "ce-specversion", "1.0",
          "ce-id", "e-1",
          "ce-source", "/apps/field-notes",
          "ce-type", "session.closed.v1",
          "ce-time", "2026-05-04T18:02:11Z",
          "content-type", "application/json",
          "host", "localhost");

  @Test
  void isTheEventThatItIsInStructuredForm() {
    SentEvent binary = accepted(judged("ce-ext", "a", "{'session':'s-1'}"));
    SentEvent structured =
        accepted(
            Events.event(
                "session.closed.v1",
                "{'session':'s-1'}",
                "'id':'e-1','source':'/apps/field-notes','time':'2026-05-04T18:02:11Z','ext':'a'"));

    assertThat(binary).isEqualTo(structured);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "Euro%20%E2%82%AC%20%F0%9F%98%80 | Euro € 😀",
        "plain text                      | plain text",
        "a%25b                           | a%b",
        "%22quoted%22                    | \"quoted\"",
        "\"a \\\"b\\\" %41\"             | a \"b\" A",
      })
  void valuesAreDecoded(String header, String value) {
    assertThat(accepted(judged("ce-subject", header, "{'session':'s-1'}")).envelope().subject())
        .isEqualTo(value);
  }

  @ParameterizedTest
  @ValueSource(strings = {"%", "%4", "%zz", "%C0%AF", "%ED%A0%80", "%E2%82", "é", "a\tb"})
  void valuesThatCannotBeDecoded(String header) {
    assertThat(faults(judged("ce-subject", header, "{'session':'s-1'}")))
        .containsExactly(
            new Fault(
                "/subject",
                "is not decodable: percent-encode as the CloudEvents HTTP binding says, in UTF-8"));
  }

  @Test
  void anAttributeThatCannotBeDecodedIsNotMissedAsWell() {
    assertThat(faults(judged("ce-source", "%zz", "{'session':'s-1'}")))
        .extracting(Fault::pointer)
        .containsExactly("/source");
  }

  @Test
  void pointersSpeakOfTheStructuredForm() {
    assertThat(faults(judged("ce-time", "now", "{'session':'s-1','x':1}")))
        .extracting(Fault::pointer)
        .containsExactlyInAnyOrder("/time", "/data/x");
    assertThat(faults(judged("ce-bad-name", "x", "{'session':'s-1'}")))
        .extracting(Fault::pointer)
        .containsExactly("/bad-name");
  }

  @Test
  void forgottenIsTheOneAttributeThatIsNoText() {
    assertThat(accepted(judged("ce-forgotten", "true", "{'session':'s-1'}")).forgotten()).isTrue();
    assertThat(faults(judged("ce-forgotten", "yes", "{'session':'s-1'}")))
        .extracting(Fault::pointer)
        .containsExactly("/forgotten");
  }

  @Test
  void dataComesInTheBody() {
    assertThat(faults(judged("ce-data", "{}", "{'session':'s-1'}")))
        .containsExactly(new Fault("/data", "comes in the body, not in a header"));
  }

  private static Judgement judged(String header, String value, String data) {
    Map<String, String> headers = new HashMap<>(USUAL);
    headers.put(header, value);
    return CONTRACT.judgeBinaryEvent(headers, tree(data));
  }
}
