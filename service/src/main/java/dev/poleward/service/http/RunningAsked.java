package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.running.Following;
import dev.poleward.domain.running.Pace;
import dev.poleward.domain.running.PoleSet;
import dev.poleward.service.codec.SetupCodec;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of a running order, as the contract's {@code AskForRunningOrder} says it.
 *
 * @param time of which members and plans are
 * @param from when the order begins
 * @param seconds at hand
 * @param plans how dogs without drills are planned for
 * @param dogs those that are present; null for all members
 */
record RunningAsked(
    Instant time,
    Instant from,
    int seconds,
    Pace pace,
    int repsPerTurn,
    List<PoleSet> poleSets,
    int instructors,
    PlanAsked plans,
    @Nullable List<Present> dogs,
    List<Following> apart,
    List<TurnRun> ran) {

  private static final double MINUTES_USUAL = 60;
  private static final double TURN_MINUTES_USUAL = 3;
  private static final double CHANGE_MINUTES_USUAL = 2;
  private static final int REPS_PER_TURN_USUAL = 5;
  private static final int SECONDS_IN_A_MINUTE = 60;

  /**
   * A dog that is present.
   *
   * @param comes null where it is there
   * @param drills null where it is to be planned for
   */
  record Present(String dog, @Nullable Instant comes, @Nullable List<DrillToRun> drills) {}

  /**
   * A turn that was run.
   *
   * @param place in the question
   * @param ended seconds from the beginning, 0 or before
   */
  record TurnRun(int place, String dog, String poleSet, Setup setup, int ended) {}

  static RunningAsked of(ObjectNode body, Instant now) {
    Instant time = time(body.get("time"), now);
    Instant from = time(body.get("from"), time);
    int turn = seconds(body.path("turnMinutes").asDouble(TURN_MINUTES_USUAL));
    int change = seconds(body.path("changeMinutes").asDouble(CHANGE_MINUTES_USUAL));
    int rest = span(body.path("rest"), turn, turn);
    List<PoleSet> poleSets = poleSets(body.path("poleSets"));
    return new RunningAsked(
        time,
        from,
        span(body.path("atHand"), turn, seconds(MINUTES_USUAL)),
        new Pace(turn, change, rest),
        body.path("repsPerTurn").asInt(REPS_PER_TURN_USUAL),
        poleSets,
        body.path("instructors").asInt(poleSets.size()),
        PlanAsked.of(
            body.get("plans") instanceof ObjectNode plans
                ? plans
                : JsonNodeFactory.instance.objectNode()),
        body.has("dogs") ? dogs(body.get("dogs")) : null,
        apart(body.path("apart")),
        ran(body.path("ran"), from, poleSets.getFirst().name()));
  }

  private static Instant time(@Nullable JsonNode said, Instant otherwise) {
    return said == null ? otherwise : OffsetDateTime.parse(said.textValue()).toInstant();
  }

  private static int seconds(double minutes) {
    return (int) Math.round(minutes * SECONDS_IN_A_MINUTE);
  }

  private static int span(JsonNode said, int turn, int otherwise) {
    if (said.has("turns")) {
      return said.get("turns").intValue() * turn;
    }
    return said.has("minutes") ? seconds(said.get("minutes").doubleValue()) : otherwise;
  }

  private static List<PoleSet> poleSets(JsonNode said) {
    List<PoleSet> poleSets = new ArrayList<>();
    for (JsonNode each : said) {
      poleSets.add(
          new PoleSet(
              each.get("poleSet").textValue(),
              each.get("stands") instanceof ObjectNode setup ? SetupCodec.read(setup) : null));
    }
    return poleSets.isEmpty() ? List.of(new PoleSet("main", null)) : poleSets;
  }

  private static List<Present> dogs(JsonNode said) {
    List<Present> dogs = new ArrayList<>();
    for (JsonNode each : said) {
      dogs.add(
          new Present(
              each.get("dog").textValue(),
              each.has("comes") ? time(each.get("comes"), Instant.MIN) : null,
              each.has("drills") ? drills(each.get("drills")) : null));
    }
    return dogs;
  }

  private static List<DrillToRun> drills(JsonNode said) {
    List<DrillToRun> drills = new ArrayList<>();
    for (JsonNode each : said) {
      if (each instanceof ObjectNode drill) {
        drills.add(DrillToRun.said(drill));
      }
    }
    return drills;
  }

  private static List<Following> apart(JsonNode said) {
    List<Following> apart = new ArrayList<>();
    for (JsonNode each : said) {
      apart.add(new Following(each.get("dog").textValue(), each.get("after").textValue()));
    }
    return apart;
  }

  private static List<TurnRun> ran(JsonNode said, Instant from, String usual) {
    List<TurnRun> ran = new ArrayList<>();
    for (JsonNode each : said) {
      if (each.get("setup") instanceof ObjectNode setup) {
        Instant ended = time(each.get("ended"), from);
        ran.add(
            new TurnRun(
                ran.size(),
                each.get("dog").textValue(),
                each.path("poleSet").asText(usual),
                SetupCodec.read(setup),
                secondsFrom(from, ended)));
      }
    }
    ran.sort(Comparator.comparingInt(TurnRun::ended));
    return ran;
  }

  /** Whole seconds from the beginning of the order; a day at most either way. */
  static int secondsFrom(Instant from, Instant to) {
    long seconds = Duration.between(from, to).toSeconds();
    long day = Duration.ofDays(1).toSeconds();
    return (int) Math.max(-day, Math.min(day, seconds));
  }
}
