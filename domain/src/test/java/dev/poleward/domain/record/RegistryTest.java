package dev.poleward.domain.record;

import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Tell.handlerRegistered;
import static dev.poleward.domain.history.Tell.withdrawn;
import static dev.poleward.domain.history.Told.given;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.ClubEvent.ClubRegistered;
import dev.poleward.domain.event.ClubEvent.ClubSettingsChanged;
import dev.poleward.domain.event.ClubEvent.PersonForgotten;
import dev.poleward.domain.event.DeviceEvent.DeviceAssigned;
import dev.poleward.domain.event.DeviceEvent.DeviceEnrolled;
import dev.poleward.domain.event.DeviceKind;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammePublished;
import dev.poleward.domain.event.RegistryEvent.GroundRegistered;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.history.Told;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The club itself, its people, places, programmes and devices. */
class RegistryTest {

  private static final Happening CLUB =
      Happening.of(
          new ClubRegistered(
              "saltmarsh", "Saltmarsh", "Europe/Lisbon", Map.of("ageMonths", 15L), null));

  private static Happening limits(Map<String, Object> careLimits) {
    return Happening.of(new ClubSettingsChanged(null, null, careLimits, null));
  }

  private static Happening settings(@Nullable String name, @Nullable String timeZone) {
    return Happening.of(new ClubSettingsChanged(name, timeZone, null, null));
  }

  private static Happening published(String programme, int version, String name) {
    return Happening.of(new ProgrammePublished(programme, version, Map.of("name", name)));
  }

  private static ClubRecord club(Told told) {
    return told.whenAsked().registry().club().orElseThrow();
  }

  @Test
  void aClubIsAsItWasRegistered() {
    ClubRecord club = club(given(CLUB.as("a")));

    assertThat(club.registered().standing().id()).isEqualTo("a");
    assertThat(club.club()).isEqualTo("saltmarsh");
    assertThat(club.name()).isEqualTo("Saltmarsh");
    assertThat(club.timeZone()).isEqualTo("Europe/Lisbon");
    assertThat(club.careLimits()).isEqualTo(Map.of("ageMonths", 15L));
    assertThat(club.defaults()).isNull();
    assertThat(given(settings("Nobody's", null)).whenAsked().registry().club()).isEmpty();
  }

  @Test
  void eachSettingIsAsTheLatestChangeThatNamesItLeftIt() {
    Told told =
        given(
            CLUB,
            settings("Late", null).at(9),
            settings("Early", "Europe/Oslo").at(5),
            limits(Map.of("gapsPerSession", 60L, "ageMonths", 18L)).at(5),
            limits(Map.of("gapsPerSession", 40L)).at(9),
            limits(Map.of("gapsPerSession", 50L, "sessionsPerWeek", 2L)).at(7));

    assertThat(club(told).name()).isEqualTo("Late");
    assertThat(club(told).timeZone()).isEqualTo("Europe/Oslo");
    assertThat(club(told).careLimits())
        .isEqualTo(Map.of("ageMonths", 18L, "gapsPerSession", 40L, "sessionsPerWeek", 2L));
  }

  @Test
  void aChangeBeforeTheRegistrationCountsToo() {
    assertThat(club(given(settings("Saltmarsh Weavers", null).at(1), CLUB.at(5))).name())
        .isEqualTo("Saltmarsh Weavers");
  }

  @Test
  void whatIsForgottenOfAPersonIsToldWithThePersonAtAllTimes() {
    Told told =
        given(
            handlerRegistered("robin").at(1).sealed("name").recordedAt(100),
            Happening.of(new PersonForgotten("robin")).at(9).as("forgetting").recordedAt(200));

    HandlerRecord now = told.whenAsked().registry().handler("robin").orElseThrow();
    HandlerRecord asOf = told.whenAskedAsOf(5).registry().handler("robin").orElseThrow();
    HandlerRecord before = told.whenAskedKnownAt(150).registry().handler("robin").orElseThrow();

    assertThat(now.forgotten()).extracting(Fact::id).isEqualTo("forgetting");
    assertThat(asOf.forgotten()).extracting(Fact::id).isEqualTo("forgetting");
    assertThat(before.forgotten()).isNull();
    assertThat(now.registered().standing().sealed()).isEqualTo(new Sealed("robin", "k-1", "name"));
  }

  @Test
  void ofAGroundTheFirstRegistrationStands() {
    Told told =
        given(
            Happening.of(new GroundRegistered("field", "Late", null, null, null)).at(9).as("b"),
            Happening.of(new GroundRegistered("field", "Early", 40.0, 20.0, "grass")).at(5));

    Registered<GroundRegistered> ground = told.whenAsked().registry().ground("field").orElseThrow();

    assertThat(ground.standing().event().name()).isEqualTo("Early");
    assertThat(ground.duplicates()).containsExactly("b");
    assertThat(told.whenAsked().registry().ground("elsewhere")).isEmpty();
  }

  @Test
  void theHighestVersionOfAProgrammeIsInForceWheneverItWasPublished() {
    Told told =
        given(
            published("grid", 2, "Two").at(1),
            published("grid", 1, "One").at(5),
            published("grid", 10, "Ten").at(3),
            published("other", 11, "Other").at(4));

    ProgrammeRecord grid = told.whenAsked().registry().programme("grid").orElseThrow();

    assertThat(grid.versions())
        .extracting(version -> version.standing().event().version())
        .containsExactly(1, 2, 10);
    assertThat(grid.inForce().standing().event().document()).containsEntry("name", "Ten");
  }

  @Test
  void ofOneVersionTheFirstPublishedStands() {
    Told told =
        given(
            published("grid", 1, "Late").at(9).as("b"),
            published("grid", 1, "Early").at(5).as("a"),
            published("grid", 2, "Mistake").as("c"),
            withdrawn("c"));

    ProgrammeRecord grid = told.whenAsked().registry().programme("grid").orElseThrow();

    assertThat(grid.inForce().standing().id()).isEqualTo("a");
    assertThat(grid.inForce().duplicates()).containsExactly("b");
    assertThat(told.whenAsked().registry().programme("other")).isEmpty();
  }

  @Test
  void aDeviceBelongsWhereItWasAssignedLast() {
    Told told =
        given(
            dogRegistered("juniper"),
            Happening.of(new DeviceEnrolled("gate", DeviceKind.TIMER)),
            Happening.of(new DeviceAssigned("gate", null, "second", null)).at(9).as("b"),
            Happening.of(new DeviceAssigned("gate", "juniper", null, null)).at(5).as("a"),
            Happening.of(new DeviceAssigned("gate", "sorrel", null, null)).at(19).as("waiting"));

    DeviceRecord now = told.whenAsked().registry().device("gate").orElseThrow();
    DeviceRecord asOf = told.whenAskedAsOf(8).registry().device("gate").orElseThrow();

    assertThat(now.enrolled().standing().event().kind()).isEqualTo(DeviceKind.TIMER);
    assertThat(now.assigned()).extracting(Fact::id).isEqualTo("b");
    assertThat(asOf.assigned()).extracting(Fact::id).isEqualTo("a");
    assertThat(told.whenAskedAsOf(1).registry().device("gate").orElseThrow().assigned()).isNull();
  }
}
