package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.ZoneId;
import java.util.Set;

/**
 * What the contract asks of events and requests that no schema can say. Looks only at members of
 * the right kind; what is wrong with the others, the schema says.
 */
final class EventRules {

  private static final Set<String> TIME_ZONES = ZoneId.getAvailableZoneIds();

  private EventRules() {}

  /**
   * Judges the data of an event.
   *
   * @param pointer where the data lies
   */
  static void judge(String type, ObjectNode data, String pointer, Findings findings) {
    switch (type) {
      case "rep.logged.v1", "rep.amended.v1" -> {
        SetupRules.judgeDirection(data, pointer, findings);
        SetupRules.judgeSetup(data.path("setup"), pointer + "/setup", findings);
        SetupRules.judgePole(data, data.path("setup").path("poles"), pointer, findings);
      }
      case "trial.run.v1" -> SetupRules.judgePole(data, data.path("poles"), pointer, findings);
      case "setup.changed.v1" ->
          SetupRules.judgeSetup(data.path("setup"), pointer + "/setup", findings);
      case "homework.set.v1" -> {
        JsonNode drills = data.path("drills");
        for (int i = 0; i < drills.size(); i++) {
          SetupRules.judgeDirection(drills.path(i), pointer + "/drills/" + i, findings);
        }
      }
      case "timing.recorded.v1" -> judgeTiming(data, pointer, findings);
      case "dog.merged.v1" -> judgeMerging(data, pointer, findings);
      case "club.settings-changed.v1" -> {
        judgeTimeZone(data, pointer, findings);
        judgeHeat(data.path("careLimits"), pointer + "/careLimits", findings);
      }
      case "dog.cleared.v1" -> judgeHeat(data.path("limits"), pointer + "/limits", findings);
      case "programme.published.v1" -> ProgrammeRules.judge(data, pointer, findings);
      default -> {
        // The schema says it all.
      }
    }
  }

  /** Judges the flat body of a request. */
  static void judgeRequest(String component, ObjectNode body, Findings findings) {
    switch (component) {
      case "RegisterClub" -> {
        judgeTimeZone(body, "", findings);
        judgeHeat(body.path("careLimits"), "/careLimits", findings);
      }
      case "AskForLayout" -> LayoutRules.judge(body, findings);
      case "AskForPlan" -> SetupRules.judgeSetup(body.path("setup"), "/setup", findings);
      case "AskForRunningOrder" -> RunningOrderRules.judge(body, findings);
      case "IssueAccessKey" -> judgeScopes(body, findings);
      default -> {
        // The schema says it all.
      }
    }
  }

  private static void judgeTiming(ObjectNode data, String pointer, Findings findings) {
    JsonNode entry = data.path("entryAt");
    JsonNode exit = data.path("exitAt");
    if (entry.isNumber() && exit.isNumber() && exit.doubleValue() < entry.doubleValue()) {
      findings.broken(pointer + "/exitAt", "must not be before entryAt");
    }
  }

  private static void judgeMerging(ObjectNode data, String pointer, Findings findings) {
    if (data.path("dog").isTextual() && data.path("dog").equals(data.path("into"))) {
      findings.broken(pointer + "/into", "must be another dog: none is merged into itself");
    }
  }

  private static void judgeTimeZone(ObjectNode data, String pointer, Findings findings) {
    JsonNode zone = data.path("timeZone");
    if (zone.isTextual() && !TIME_ZONES.contains(zone.textValue())) {
      findings.broken(
          pointer + "/timeZone",
          "is not a time zone known here; give its IANA name, as in Europe/Lisbon");
    }
  }

  /** A caution above the stop would never be heard. */
  private static void judgeHeat(JsonNode limits, String pointer, Findings findings) {
    JsonNode caution = limits.path("heatCaution");
    JsonNode stop = limits.path("heatStop");
    if (caution.isNumber() && stop.isNumber() && caution.doubleValue() > stop.doubleValue()) {
      findings.broken(pointer + "/heatCaution", "must not be above heatStop");
    }
  }

  private static void judgeScopes(ObjectNode body, Findings findings) {
    JsonNode scopes = body.path("scopes");
    for (int i = 0; body.has("dogs") && i < scopes.size(); i++) {
      if ("club:manage".equals(scopes.path(i).textValue())) {
        findings.broken("/scopes/" + i, "is not for a key that is narrowed to dogs");
      }
    }
  }
}
