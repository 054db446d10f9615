package dev.poleward.service.contract;

import static dev.poleward.service.contract.PlainContract.PLAIN;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Times by place, against the library that knows every form. */
class TimeTextTest {

  private final SchemaJudge time = new Components(PLAIN.openapi()).judge("Time");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-05-04T18:02:11+01:00",
        "2026-05-04t18:02:11z",
        "1900-01-01T00:00:00Z",
        "2199-12-31T23:59:59.999999999Z",
        "2024-02-29T12:00:00.5-00:30",
        "2026-05-04T18:02:11.012+18:00",
        "2026-05-04T18:02:11.000000001-17:59",
        "2026-05-04T18:02:11-18:00",
      })
  void areRead(String text) {
    assertThat(time.accepts(JsonNodeFactory.instance.textNode(text))).isTrue();
    assertThat(TimeText.read(text)).isEqualTo(OffsetDateTime.parse(text));
  }

  @Test
  void whateverTheContractAcceptsIsReadAsTheLibraryReadsIt() {
    for (int month = 0; month <= 19; month++) {
      for (int day = 0; day <= 39; day++) {
        for (String year : new String[] {"1900", "2000", "2024", "2026"}) {
          agree("%s-%02d-%02dT10:00:00Z".formatted(year, month, day));
        }
      }
    }
    for (int hour = 0; hour <= 29; hour++) {
      for (int minute = 0; minute <= 69; minute++) {
        agree("2026-05-04T%02d:%02d:59Z".formatted(hour, minute));
        agree("2026-05-04T00:00:00+%02d:%02d".formatted(hour, minute));
        agree("2026-05-04T00:00:00-%02d:%02d".formatted(hour, minute));
      }
    }
  }

  private void agree(String text) {
    JsonNode node = JsonNodeFactory.instance.textNode(text);
    OffsetDateTime expected;
    try {
      expected = OffsetDateTime.parse(text);
    } catch (DateTimeException e) {
      assertThat(time.accepts(node)).as(text).isFalse();
      return;
    }
    // One moment has two spellings of no offset; the contract knows one.
    boolean odd = text.endsWith("-00:00");
    assertThat(time.accepts(node)).as(text).isEqualTo(!odd);
    assertThat(TimeText.read(text)).isEqualTo(expected);
  }
}
