package dev.poleward.service.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Reads back JSON that this service wrote. */
final class JsonText {

  private static final ObjectReader OBJECTS = new ObjectMapper().readerFor(ObjectNode.class);

  private JsonText() {}

  static ObjectNode object(String json) {
    try {
      return OBJECTS.readValue(json);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("what was written as JSON reads as JSON", e);
    }
  }
}
