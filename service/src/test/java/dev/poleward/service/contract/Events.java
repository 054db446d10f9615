package dev.poleward.service.contract;

import static org.assertj.core.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import dev.poleward.service.contract.Judgement.Accepted;
import dev.poleward.service.contract.Judgement.Refused;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Bodies by hand, and what becomes of them. */
final class Events {

  static final Contract CONTRACT = Contract.load();

  private Events() {}

  /** An event around its data, both with apostrophes for quotes. */
  static String event(String type, String data) {
    return event(type, data, "'id':'e-1','source':'/tests','time':'2026-05-04T18:02:11+01:00'");
  }

  /** An event around its data, with these attributes besides version and type. */
  static String event(String type, String data, String attributes) {
    return "{'specversion':'1.0','type':'%s',%s,'data':%s}".formatted(type, attributes, data);
  }

  static JsonNode tree(String json) {
    return switch (CONTRACT.parse(bytes(json.replace('\'', '"')))) {
      case ParsedBody.Parsed(JsonNode tree) -> tree;
      case ParsedBody.Unreadable(List<Fault> faults) -> fail(json + " " + faults);
    };
  }

  static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** What is wrong with an event; nothing when it is accepted. */
  static List<Fault> faults(String json) {
    return faults(CONTRACT.judgeEvent("", tree(json)));
  }

  static List<Fault> faults(Judgement judgement) {
    return switch (judgement) {
      case Accepted _ -> List.of();
      case Refused(List<Fault> faults) -> faults;
    };
  }

  static SentEvent accepted(String json) {
    return accepted(CONTRACT.judgeEvent("", tree(json)));
  }

  static SentEvent accepted(Judgement judgement) {
    return switch (judgement) {
      case Accepted(SentEvent event) -> event;
      case Refused(List<Fault> faults) -> fail("refused: " + faults);
    };
  }
}
