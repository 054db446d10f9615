package dev.poleward.service.demo;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What is told of the invented club, and in which order it arrives. */
class SeasonTest {

  private static final LocalDate FIRST_DAY = LocalDate.parse("2026-03-02");

  private final List<ObjectNode> season = Season.of(FIRST_DAY, DemoClub.SEASON_WEEKS);

  private static String text(ObjectNode event, String member) {
    return event.path("data").path(member).asText();
  }

  private List<ObjectNode> of(String type) {
    return season.stream().filter(event -> event.get("type").textValue().equals(type)).toList();
  }

  @Test
  void theSameFirstDayIsTheSameSeasonToTheLetter() {
    assertThat(Season.of(FIRST_DAY, DemoClub.SEASON_WEEKS)).isEqualTo(season);
    assertThat(season.stream().map(event -> event.get("id").textValue())).doesNotHaveDuplicates();
    assertThat(season).hasSizeBetween(2_500, 6_000);
  }

  @Test
  void itLastsUntilTheDayBeforeItsWeeksAreOver() {
    var days =
        season.stream()
            .map(event -> OfflinePhones.time(event).toLocalDate())
            .collect(Collectors.toCollection(TreeSet::new));

    assertThat(days.getFirst()).isEqualTo(FIRST_DAY);
    assertThat(days.getLast()).isEqualTo(FIRST_DAY.plusWeeks(DemoClub.SEASON_WEEKS).minusDays(1));
  }

  @Test
  void dogsAdvanceByTheirOwnResults() {
    Map<String, Long> tunnels =
        of("rep.logged.v1").stream()
            .filter(rep -> text(rep, "manoeuvre").equals("rear-cross"))
            .collect(groupingBy(rep -> text(rep, "dog"), counting()));

    // Rear crosses come behind a jump or a tunnel; the young dog is kept from both.
    assertThat(tunnels).doesNotContainKey("wren").containsKeys("juniper", "sorrel");
    assertThat(tunnels.get("sorrel")).isGreaterThan(tunnels.getOrDefault("bracken", 0L));
    assertThat(of("dog.registered.v1"))
        .filteredOn(dog -> text(dog, "guest").equals("true"))
        .hasSize(1);
  }

  @Test
  void someOfItIsWrongHelpedVoidOrToldTwice() {
    List<ObjectNode> reps = of("rep.logged.v1");

    assertThat(of("rep.amended.v1")).hasSizeGreaterThan(3);
    assertThat(of("event.withdrawn.v1")).isNotEmpty();
    assertThat(reps).anyMatch(rep -> text(rep, "outcome").equals("void"));
    assertThat(reps).anyMatch(rep -> text(rep, "help").equals("guide"));
    assertThat(reps).filteredOn(rep -> !text(rep, "observer").isEmpty()).hasSizeGreaterThan(1);
    assertThat(reps).anyMatch(rep -> text(rep, "dog").equals("fennel"));
    assertThat(reps)
        .anyMatch(
            rep -> rep.path("data").has("rewards") && rep.path("data").path("rewards").isEmpty());
  }

  @Test
  void theSixPolesAreTriedEarly() {
    assertThat(of("setup.changed.v1"))
        .anyMatch(setup -> setup.path("data").path("setup").path("poles").asInt() == 6)
        .anyMatch(setup -> setup.path("data").path("setup").path("leadIn").asText().equals("jump"))
        .anyMatch(setup -> setup.path("data").path("setup").path("angle").asDouble() == -9.56);
  }

  @Test
  void phonesThatWereOutOfReachTellItLateMixedUpAndPartlyTwice() {
    List<ObjectNode> delivered = OfflinePhones.asDelivered(season);
    List<ObjectNode> inOrder = OfflinePhones.inOrder(season);

    assertThat(new HashSet<>(delivered)).isEqualTo(new HashSet<>(season));
    assertThat(inOrder).hasSameSizeAs(season);
    assertThat(delivered.size()).isGreaterThan(season.size() + 10);
    long backwards = 0;
    for (int i = 1; i < delivered.size(); i++) {
      if (OfflinePhones.time(delivered.get(i)).isBefore(OfflinePhones.time(delivered.get(i - 1)))) {
        backwards++;
      }
    }
    assertThat(backwards).isGreaterThan(100);
  }
}
