package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/** What became of reading a body as JSON. */
public sealed interface ParsedBody {

  /** It is JSON. */
  record Parsed(JsonNode tree) implements ParsedBody {}

  /** It is none, or none that is read here; the sentences say where reading stopped. */
  record Unreadable(List<Fault> faults) implements ParsedBody {

    /** Keeps the faults from changing. */
    public Unreadable {
      faults = List.copyOf(faults);
    }
  }
}
