package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What the contract asks of a wish for a running order that no schema can say. */
final class RunningOrderRules {

  private RunningOrderRules() {}

  static void judge(ObjectNode body, Findings findings) {
    judgeOnce(body.path("dogs"), "/dogs", "dog", findings);
    judgeOnce(body.path("poleSets"), "/poleSets", "poleSet", findings);
    JsonNode poleSets = body.path("poleSets");
    for (int i = 0; i < poleSets.size(); i++) {
      SetupRules.judgeSetup(
          poleSets.path(i).path("stands"), "/poleSets/" + i + "/stands", findings);
    }
    JsonNode dogs = body.path("dogs");
    for (int i = 0; i < dogs.size(); i++) {
      JsonNode drills = dogs.path(i).path("drills");
      for (int j = 0; j < drills.size(); j++) {
        SetupRules.judgeSetup(
            drills.path(j).path("setup"), "/dogs/%d/drills/%d/setup".formatted(i, j), findings);
      }
    }
    judgeApart(body.path("apart"), findings);
    judgeTimes(body, findings);
  }

  private static void judgeOnce(JsonNode list, String pointer, String name, Findings findings) {
    Set<String> before = new HashSet<>();
    for (int i = 0; i < list.size(); i++) {
      JsonNode said = list.path(i).path(name);
      if (said.isTextual() && !before.add(said.textValue())) {
        findings.broken(pointer + "/" + i + "/" + name, "is named a second time");
      }
    }
  }

  private static void judgeApart(JsonNode apart, Findings findings) {
    for (int i = 0; i < apart.size(); i++) {
      JsonNode dog = apart.path(i).path("dog");
      if (dog.isTextual() && dog.equals(apart.path(i).path("after"))) {
        findings.broken("/apart/" + i + "/after", "must be another dog");
      }
    }
  }

  private static void judgeTimes(ObjectNode body, Findings findings) {
    OffsetDateTime time = time(body.path("time"));
    OffsetDateTime from = time(body.path("from"));
    if (from != null && body.path("time").isMissingNode()) {
      findings.broken("/time", "is required with from");
    }
    if (time != null && from != null && from.isBefore(time)) {
      findings.broken("/from", "must not be before time");
    }
    OffsetDateTime begins = from == null ? time : from;
    Set<String> poleSets = new HashSet<>();
    body.path("poleSets").forEach(each -> poleSets.add(each.path("poleSet").asText()));
    JsonNode ran = body.path("ran");
    for (int i = 0; i < ran.size(); i++) {
      String pointer = "/ran/" + i;
      SetupRules.judgeSetup(ran.path(i).path("setup"), pointer + "/setup", findings);
      OffsetDateTime ended = time(ran.path(i).path("ended"));
      if (begins != null && ended != null && ended.isAfter(begins)) {
        findings.broken(pointer + "/ended", "must not be after from");
      }
      JsonNode on = ran.path(i).path("poleSet");
      if (on.isTextual() && !poleSets.isEmpty() && !poleSets.contains(on.textValue())) {
        findings.broken(pointer + "/poleSet", "is not one of poleSets");
      }
    }
    if (!ran.isEmpty() && body.path("time").isMissingNode()) {
      findings.broken("/time", "is required with ran");
    }
  }

  private static @Nullable OffsetDateTime time(JsonNode said) {
    if (!said.isTextual()) {
      return null;
    }
    try {
      return OffsetDateTime.parse(said.textValue());
    } catch (DateTimeException e) {
      // What is wrong with it, the schema says.
      return null;
    }
  }
}
