package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.DocumentFault;
import dev.poleward.domain.programme.DocumentReading.Faulty;
import dev.poleward.domain.programme.DocumentReading.Sound;
import dev.poleward.domain.programme.ProgrammeDocument;
import dev.poleward.service.codec.Documents;

/**
 * What the contract asks of a programme's document that no schema can say: the domain reads it, as
 * it will later, and says what is wrong.
 */
final class ProgrammeRules {

  private ProgrammeRules() {}

  static void judge(ObjectNode programme, String pointer, Findings findings) {
    if (DefaultProgramme.ID.equals(programme.path("programme").textValue())) {
      findings.broken(
          pointer + "/programme", "is the id of the programme that ships; publish under another");
    }
    switch (ProgrammeDocument.read(Documents.read(programme))) {
      case Sound _ -> {
        // Nothing to say.
      }
      case Faulty faulty -> {
        for (DocumentFault fault : faulty.faults()) {
          findings.broken(pointer + fault.pointer(), fault.detail());
        }
      }
    }
  }
}
