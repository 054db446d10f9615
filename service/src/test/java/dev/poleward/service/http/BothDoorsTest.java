package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.history.GeneratedHistory;
import dev.poleward.service.Club;
import dev.poleward.service.RunningService;
import dev.poleward.service.SharedService;
import dev.poleward.service.http.ResourceDoors.Door;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * One record, whichever doors its events came through. What has a door of its own comes in there,
 * the rest through the event door.
 */
@ExtendWith(SharedService.class)
class BothDoorsTest {

  private final RunningService service;

  BothDoorsTest(RunningService service) {
    this.service = service;
  }

  @Test
  void contractAndServiceHaveTheSameDoors() {
    Map<String, String> doors = new TreeMap<>();
    ResourceDoors.ALL.forEach(door -> doors.put(door.path(), door.type()));

    assertThat(doors).isEqualTo(FlatContract.doors()).hasSameSizeAs(ResourceDoors.ALL);
  }

  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23})
  void eventsThroughEitherDoorMakeTheSameRecord(long seed) {
    List<ObjectNode> events =
        GeneratedHistory.of(seed).events().stream()
            .map(event -> (ObjectNode) FlatBody.tree(GeneratedEvents.written(event)))
            .toList();
    Club whole = service.newClub();
    Club flat = service.newClub();
    List<Integer> statuses = new ArrayList<>();
    Set<String> through = new HashSet<>();
    for (ObjectNode event : events) {
      event.remove("recordedtime");
      int status = whole.send(event.toString()).statusCode();
      Optional<Door> door = FlatBody.door(event.get("type").textValue());
      Response answer =
          door.map(each -> FlatBody.of(each, event).post(flat))
              .orElseGet(() -> flat.send(event.toString()));
      assertThat(answer.statusCode()).as("%s", event).isEqualTo(status);
      door.ifPresent(each -> through.add(each.below()));
      statuses.add(status);
    }

    assertThat(statuses).contains(201);
    assertThat(through).hasSizeGreaterThanOrEqualTo(ResourceDoors.ALL.size() / 2);
    assertThat(flat.get("/digest").asString()).isEqualTo(whole.get("/digest").asString());
    assertThat(facts(flat)).isEqualTo(facts(whole));
    // And each is known at the other door.
    for (ObjectNode event : events) {
      FlatBody.door(event.get("type").textValue())
          .ifPresent(
              door ->
                  assertThat(FlatBody.of(door, event).post(whole).<String>path("status"))
                      .isEqualTo("repeated"));
      assertThat(flat.send(event.toString()).<String>path("status")).isEqualTo("repeated");
    }
  }

  /** What is kept of each event, its recording time aside. */
  private static Map<String, JsonNode> facts(Club club) {
    Map<String, JsonNode> facts = new TreeMap<>();
    for (JsonNode event :
        FlatBody.tree(club.get("/events?after=2&limit=1000").asString()).path("events")) {
      facts.put(event.path("id").textValue(), ((ObjectNode) event).remove(List.of("recordedtime")));
    }
    return facts;
  }
}
