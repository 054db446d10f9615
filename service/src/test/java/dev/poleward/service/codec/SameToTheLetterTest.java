package dev.poleward.service.codec;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.Envelope;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.event.RepEvent.RepAmended;
import dev.poleward.domain.event.RepField;
import dev.poleward.domain.event.TrainingEvent;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The same content is written the same, on every node and after every start. */
class SameToTheLetterTest {

  private static final JsonMapper JSON = new JsonMapper();
  private final EventCodec codec = new EventCodec(Upcasters.NONE);

  private static ObjectNode json(String text) throws JsonProcessingException {
    return (ObjectNode) JSON.readTree(text.replace('\'', '"'));
  }

  /** RFC 8785 writes whole numbers below 1e21 without an exponent. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "9007199254740992",
        "4611686018427387904",
        "9223372036854775808",
        "100000000000000000000",
        "999999999999999900000",
        "-100000000000000000000",
        "1e21",
        "1e300",
        "0.1",
        "1e-7",
        "-0.0"
      })
  void numbersOfDocumentsSurviveWhateverTheirSize(String number) throws Exception {
    ObjectNode sent = json("{'dog':'juniper','limits':{'poles':[%s]}}".formatted(number));

    TrainingEvent event = codec.decode("dog.cleared.v1", json(CanonicalJson.of(sent)));

    assertThat(event).isNotNull();
    assertThat(CanonicalJson.of(codec.encode(event))).isEqualTo(CanonicalJson.of(sent));
  }

  /** A set may give its elements in another order at the next start; the wire may not. */
  @Test
  void fieldsThatAreTakenAwayComeInOneOrder() {
    Random random = new Random(3);
    List<RepField> fields = new ArrayList<>(EnumSet.allOf(RepField.class));
    for (int i = 0; i < 200; i++) {
      Collections.shuffle(fields, random);
      EnumSet<RepField> cleared = EnumSet.copyOf(fields.subList(0, 1 + random.nextInt(8)));
      RepAmended amended = new RepAmended("r-1", null, null, null, null, RepDetails.NONE, cleared);

      List<String> names = new ArrayList<>(List.of("rep"));
      cleared.forEach(field -> names.add(MemberNames.of(field)));
      assertThat(codec.encode(amended).fieldNames()).toIterable().containsExactlyElementsOf(names);
    }
  }

  @Test
  void extensionsComeInTheOrderOfTheirNames() {
    OffsetDateTime time = OffsetDateTime.parse("2026-05-04T17:00:00Z");
    Map<String, Object> extensions = Map.of("zone", "b", "attempt", 2L, "offline", true, "m", "");

    Envelope envelope = new Envelope("e-1", "/apps/a", time, null, null, extensions);

    assertThat(envelope.extensions()).isEqualTo(extensions);
    assertThat(envelope.extensions().keySet()).containsExactly("attempt", "m", "offline", "zone");
  }

  @ParameterizedTest
  @CsvSource({
    "2026-05-04T18:00:00+01:00, 2026-05-04T18:00:00+01:00",
    "2026-05-04T18:02:00.000Z, 2026-05-04T18:02:00Z",
    "2026-05-04T18:02:11.250-03:30, 2026-05-04T18:02:11.25-03:30",
    "1969-12-31T23:59:59.000000001Z, 1969-12-31T23:59:59.000000001Z"
  })
  void timesAreRfc3339InTheOffsetInWhichTheyWereTold(String told, String written) {
    assertThat(new Writing().put("time", OffsetDateTime.parse(told)).done().get("time").textValue())
        .isEqualTo(written);
  }
}
