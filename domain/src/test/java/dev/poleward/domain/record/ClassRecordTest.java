package dev.poleward.domain.record;

import static dev.poleward.domain.history.Tell.classFormed;
import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Tell.joined;
import static dev.poleward.domain.history.Tell.left;
import static dev.poleward.domain.history.Tell.merged;
import static dev.poleward.domain.history.Tell.withdrawn;
import static dev.poleward.domain.history.Told.given;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.history.Asked;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.history.Told;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Who belongs to a class, and since when. */
class ClassRecordTest {

  private static Told givenClass(Happening... happenings) {
    List<Happening> all = new ArrayList<>();
    all.add(classFormed("evening").at(90));
    all.add(dogRegistered("juniper").at(90));
    all.add(dogRegistered("bramble").at(90));
    all.addAll(List.of(happenings));
    return given(all.toArray(Happening[]::new));
  }

  /** Members with the event by which they joined. */
  private static Map<String, String> members(Asked asked) {
    Map<String, String> members = new TreeMap<>();
    asked
        .registry()
        .group("evening")
        .orElseThrow()
        .members()
        .forEach((dog, joining) -> members.put(dog, joining.id()));
    return members;
  }

  @Test
  void whoJoinedBelongsUntilItLeaves() {
    Told told =
        givenClass(
            joined("evening", "juniper").at(1).as("a"),
            joined("evening", "bramble").at(3).as("b"),
            left("evening", "juniper").at(5));

    assertThat(members(told.whenAsked())).isEqualTo(Map.of("bramble", "b"));
    assertThat(members(told.whenAskedAsOf(0))).isEmpty();
    assertThat(members(told.whenAskedAsOf(1))).isEqualTo(Map.of("juniper", "a"));
    assertThat(members(told.whenAskedAsOf(4))).isEqualTo(Map.of("juniper", "a", "bramble", "b"));
    assertThat(members(told.whenAskedAsOf(5))).isEqualTo(Map.of("bramble", "b"));
  }

  @Test
  void membersComeInTheOrderOfTheirIds() {
    Told told = givenClass(joined("evening", "juniper"), joined("evening", "bramble"));

    assertThat(told.whenAsked().registry().group("evening").orElseThrow().members().keySet())
        .containsExactly("bramble", "juniper");
  }

  @Test
  void itGoesByTimeAndNotByArrival() {
    Told told =
        givenClass(left("evening", "juniper").at(5), joined("evening", "juniper").at(9).as("a"));

    assertThat(members(told.whenAsked())).isEqualTo(Map.of("juniper", "a"));
  }

  @Test
  void atOneInstantTheGreaterIdHasTheLastWord() {
    Told leaves =
        givenClass(
            left("evening", "juniper").at(5).as("z"), joined("evening", "juniper").at(5).as("a"));
    Told joins =
        givenClass(
            left("evening", "juniper").at(5).as("a"), joined("evening", "juniper").at(5).as("z"));

    assertThat(members(leaves.whenAsked())).isEmpty();
    assertThat(members(joins.whenAsked())).isEqualTo(Map.of("juniper", "z"));
  }

  @Test
  void whoJoinsTwiceBelongsSinceTheFirstTime() {
    Told told =
        givenClass(
            joined("evening", "juniper").at(1).as("a"), joined("evening", "juniper").at(5).as("b"));

    assertThat(members(told.whenAsked())).isEqualTo(Map.of("juniper", "a"));
  }

  @Test
  void whoComesBackBelongsSinceThen() {
    Told told =
        givenClass(
            joined("evening", "juniper").at(1),
            left("evening", "juniper").at(5),
            joined("evening", "juniper").at(9).as("back"));

    assertThat(members(told.whenAsked())).isEqualTo(Map.of("juniper", "back"));
  }

  @Test
  void aMergedDogBelongsUnderItsOneName() {
    Told told =
        givenClass(
            joined("evening", "bramble").at(1).as("a"),
            joined("evening", "juniper").at(2).as("b"),
            merged("bramble", "juniper"));

    assertThat(members(told.whenAsked())).isEqualTo(Map.of("juniper", "a"));
  }

  @Test
  void aMergedDogLeavesUnderAnyOfItsNames() {
    Told told =
        givenClass(
            joined("evening", "juniper").at(1),
            left("evening", "bramble").at(5),
            merged("bramble", "juniper"));

    assertThat(members(told.whenAsked())).isEmpty();
  }

  @Test
  void aWithdrawnLeavingLeavesItIn() {
    Told told =
        givenClass(
            joined("evening", "juniper").at(1).as("a"),
            left("evening", "juniper").at(5).as("mistake"),
            withdrawn("mistake"));

    assertThat(members(told.whenAsked())).isEqualTo(Map.of("juniper", "a"));
  }

  @Test
  void aClassThatNobodyFormedIsNotThere() {
    assertThat(given(joined("evening", "juniper")).whenAsked().registry().group("evening"))
        .isEmpty();
  }
}
