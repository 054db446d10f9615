package dev.poleward.domain.record;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.ClassEvent.ClassFormed;
import dev.poleward.domain.event.ClassEvent.ClassJoined;
import dev.poleward.domain.event.ClubEvent.AccessKeyRevoked;
import dev.poleward.domain.event.ClubEvent.ClubRegistered;
import dev.poleward.domain.event.DeviceEvent.DeviceAssigned;
import dev.poleward.domain.event.DogEvent.DogMerged;
import dev.poleward.domain.event.DogEvent.DogRegistered;
import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.EventWithdrawn;
import dev.poleward.domain.event.ProgrammeEvent.PlanIssued;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammeAssigned;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.event.TimingEvent.TimingPaired;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.history.GeneratedHistory;
import dev.poleward.domain.history.Tell;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** What events announce, refer to and are filed under. */
class ReferencesTest {

  private static void refers(TrainingEvent event, String... references) {
    assertThat(References.of(event))
        .extracting(reference -> reference.kind() + " " + reference.id())
        .containsExactly(references);
  }

  @Test
  void anEventRefersToAllThatItNamesButDoesNotAnnounce() {
    refers(Tell.rep("r-1").event(), "SESSION s-1", "DOG juniper");
    refers(
        Tell.rep("r-1", rep -> rep.handler("robin").observer("sam")).event(),
        "SESSION s-1",
        "DOG juniper",
        "HANDLER robin",
        "HANDLER sam");
    refers(Tell.amended("r-1", rep -> rep.by("bramble")).event(), "REP r-1", "DOG bramble");
    refers(
        new SessionOpened("s-1", "field", "evening", null, null, null),
        "GROUND field",
        "CLASS evening");
    refers(new ClassFormed("evening", "Evening", "robin", null), "HANDLER robin");
    refers(new ClassJoined("evening", "juniper"), "CLASS evening", "DOG juniper");
    refers(new DogMerged("bramble", "juniper"), "DOG bramble", "DOG juniper");
    refers(new ProgrammeAssigned("juniper", "grid", null), "DOG juniper", "PROGRAMME grid");
    refers(new PlanIssued("l-1", "juniper", Map.of()), "DOG juniper");
    refers(new DeviceAssigned("gate", null, "second", "field"), "DEVICE gate", "GROUND field");
    refers(new TimingPaired("e-1", "r-1"), "EVENT e-1", "REP r-1");
    refers(
        new TimingRecorded("gate", 1, 2, 3, 4, null, "s-1", "juniper", "r-1", null),
        "DEVICE gate",
        "SESSION s-1",
        "DOG juniper",
        "REP r-1");
    refers(new EventWithdrawn("e-1", "x"), "EVENT e-1");
    refers(new AccessKeyRevoked("k-1"), "KEY k-1");
    refers(new ClubRegistered("saltmarsh", "Saltmarsh", "Europe/Lisbon", null, null));
  }

  @Test
  void eachIsNamedOnce() {
    refers(
        new DogRegistered(
            "juniper", "Juniper", new DogTraits(null, null, null, List.of("robin", "robin"), null)),
        "HANDLER robin");
    refers(
        Tell.rep("r-1", rep -> rep.handler("robin").observer("robin")).event(),
        "SESSION s-1",
        "DOG juniper",
        "HANDLER robin");
  }

  /** Or a record would wait for itself for ever. */
  @Test
  void nothingWaitsForWhatItAnnouncesItself() {
    forGenerated(
        event -> {
          EntityRef announced = Announcement.of(event);
          if (announced != null) {
            assertThat(References.of(event)).doesNotContain(announced);
          }
        });
  }

  /** What is known is looked up under the entity; reps have their own ways. */
  @Test
  void whatAnnouncesAnEntityIsFiledUnderIt() {
    forGenerated(
        event -> {
          EntityRef announced = Announcement.of(event);
          if (announced != null && !(event instanceof RepLogged)) {
            assertThat(Filing.of(event)).isEqualTo(announced);
          }
        });
  }

  private static void forGenerated(Consumer<TrainingEvent> check) {
    for (long seed = 1; seed <= 200; seed++) {
      GeneratedHistory.withInternalEvents(seed).facts().forEach(fact -> check.accept(fact.event()));
    }
  }
}
