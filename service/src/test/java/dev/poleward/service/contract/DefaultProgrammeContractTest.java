package dev.poleward.service.contract;

import static dev.poleward.service.contract.Events.CONTRACT;
import static dev.poleward.service.contract.Events.accepted;
import static dev.poleward.service.contract.Events.faults;
import static dev.poleward.service.contract.PlainContract.PLAIN;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.DocumentWriting;
import dev.poleward.service.codec.Documents;
import org.junit.jupiter.api.Test;

/** The default programme is a document like any other: a club could publish it under another id. */
class DefaultProgrammeContractTest {

  @Test
  void itKeepsToTheSchemaAsItShipsAndWithEverythingSaid() {
    ObjectNode shipped = Documents.write(DefaultProgramme.document());
    ObjectNode written = Documents.write(DocumentWriting.of(DefaultProgramme.programme()));

    assertThat(PLAIN.accepts("ProgrammePublishedV1", shipped)).isTrue();
    assertThat(PLAIN.accepts("ProgrammePublishedV1", written)).isTrue();
  }

  @Test
  void theDoorLetsItInUnderAnotherId() {
    ObjectNode own = Documents.write(DefaultProgramme.document()).put("programme", "own");

    assertThat(accepted(CONTRACT.judgeEvent("", published(own))).type())
        .isEqualTo("programme.published.v1");
    assertThat(
            faults(
                CONTRACT.judgeEvent("", published(Documents.write(DefaultProgramme.document())))))
        .containsExactly(
            new Fault(
                "/data/programme", "is the id of the programme that ships; publish under another"));
  }

  private static ObjectNode published(ObjectNode document) {
    ObjectNode event = JsonNodeFactory.instance.objectNode();
    event.put("specversion", "1.0").put("id", "e-1").put("source", "/test");
    event.put("type", "programme.published.v1").put("time", "2026-05-04T18:00:00Z");
    event.set("data", document);
    return event;
  }
}
