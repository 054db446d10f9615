package dev.poleward.domain.pace;

import static dev.poleward.domain.history.Tell.merged;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Tell.setup;
import static dev.poleward.domain.history.Tell.setupAt;
import static dev.poleward.domain.history.Tell.tunnelAt;
import static dev.poleward.domain.history.Tell.withdrawn;
import static dev.poleward.domain.history.Told.givenTraining;
import static dev.poleward.domain.history.Told.minute;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.DeviceEvent.DeviceAssigned;
import dev.poleward.domain.event.DeviceEvent.DeviceEnrolled;
import dev.poleward.domain.event.DeviceKind;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.TimingEvent.TimingPaired;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.event.TimingEvent.TimingUnpaired;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.MemoryFacts;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.View;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Which timing belongs to which rep. */
class PairingTest {

  private static final Happening ENROLLED =
      Happening.of(new DeviceEnrolled("gate-1", DeviceKind.TIMER)).as("gate").at(0).recordedAt(0);

  private static PairedTimings timings(String dog, View view, Happening... told) {
    List<Happening> all = new ArrayList<>(List.of(told));
    all.add(ENROLLED);
    MemoryFacts facts = MemoryFacts.of(givenTraining(all.toArray(Happening[]::new)).facts());
    Placement placement = new Placement(facts, view);
    return new ClubTimings(placement, minute(-100), minute(5_000)).ofDog(dog, placement.ofDog(dog));
  }

  /** The timing of each timed rep. */
  private static Map<String, String> pairs(PairedTimings timings) {
    Map<String, String> pairs = new TreeMap<>();
    timings.reps().forEach(timed -> pairs.put(timed.rep().rep(), timed.timing().id()));
    return pairs;
  }

  private static Map<String, String> pairs(Happening... told) {
    return pairs(timings("juniper", View.EVERYTHING, told));
  }

  private static Happening paired(String timing, String rep) {
    return Happening.of(new TimingPaired(timing, rep));
  }

  private static Happening unpaired(String timing, String rep) {
    return Happening.of(new TimingUnpaired(timing, rep));
  }

  private static List<String> ids(PairedTimings timings) {
    return timings.unpaired().stream().map(Fact::id).toList();
  }

  @Test
  void timingsFollowTheRepsInOrder() {
    PairedTimings timings =
        timings(
            "juniper",
            View.EVERYTHING,
            setupAt(30),
            rep("r-1").at(10),
            rep("r-2").at(20),
            rep("r-3").at(30),
            Gate.OF_JUNIPER.at(10, "t-1"),
            Gate.OF_JUNIPER.at(15, "stray"),
            Gate.OF_JUNIPER.at(30, "t-3"));

    assertThat(pairs(timings)).isEqualTo(Map.of("r-1", "t-1", "r-3", "t-3"));
    assertThat(ids(timings)).containsExactly("stray");
    assertThat(timings.devices().getFirst().timings()).isEqualTo(3);
  }

  @Test
  void whatIsTooFarApartIsNotPaired() {
    assertThat(pairs(rep("r-1").at(12), Gate.OF_JUNIPER.at(10, "t-1"))).isEmpty();
    assertThat(pairs(rep("r-1").at(11), Gate.OF_JUNIPER.at(10, "t-1"))).hasSize(1);
  }

  @Test
  void aTimingsOwnRepHoldsHoweverFarItLies() {
    assertThat(
            pairs(
                rep("r-1").at(10),
                rep("r-2").at(200),
                Gate.of("r-2").at(10, "t-1"),
                Gate.OF_JUNIPER.at(200, "t-2")))
        .as("and no other of the device is given to it")
        .isEqualTo(Map.of("r-2", "t-1"));
  }

  @Test
  void theLastWordOnAPairHolds() {
    Happening rep1 = rep("r-1").at(10);
    Happening rep2 = rep("r-2").at(100);
    Happening timing = Gate.of("r-1").at(10, "t-1");

    assertThat(pairs(rep1, rep2, timing, paired("t-1", "r-2").at(300)))
        .isEqualTo(Map.of("r-2", "t-1"));
    assertThat(
            pairs(rep1, rep2, timing, paired("t-1", "r-2").at(300), unpaired("t-1", "r-2").at(301)))
        .isEmpty();
    assertThat(
            pairs(
                rep1,
                rep2,
                timing,
                unpaired("t-1", "r-1").at(302),
                paired("t-1", "r-1").at(303),
                paired("t-1", "r-2").at(301)))
        .isEqualTo(Map.of("r-1", "t-1"));
    assertThat(
            pairs(
                rep1,
                rep2,
                timing,
                paired("t-1", "r-2").at(300).as("pairing"),
                withdrawn("pairing").at(301)))
        .isEqualTo(Map.of("r-1", "t-1"));
  }

  @Test
  void whatIsUnpairedIsGivenToAnotherButNotToThatOne() {
    Happening other = rep("r-0").at(10);

    assertThat(
            pairs(rep("r-1").at(10), Gate.OF_JUNIPER.at(10, "t-1"), unpaired("t-1", "r-1").at(300)))
        .isEmpty();
    assertThat(
            pairs(
                rep("r-1").at(10),
                other,
                Gate.OF_JUNIPER.at(10, "t-1"),
                unpaired("t-1", "r-1").at(300)))
        .isEqualTo(Map.of("r-0", "t-1"));
  }

  @Test
  void ofSeveralTimingsOfARepTheOneThatIsToldSoIsTaken() {
    PairedTimings timings =
        timings(
            "juniper",
            View.EVERYTHING,
            rep("r-1").at(10),
            Gate.of("r-1").at(12, "b"),
            Gate.of("r-1").at(11, "a"));

    assertThat(pairs(timings)).isEqualTo(Map.of("r-1", "a"));
    assertThat(timings.further()).isEqualTo(1);
  }

  @Test
  void aGateThatSaysNothingTimesAllDogsOfTheSession() {
    // Both sessions of the frame were opened at minute -60; s-2 is the later by its event's id.
    PairedTimings timings = timings("juniper", View.EVERYTHING, gateIn("s-2"));

    assertThat(pairs(timings)).isEqualTo(Map.of("r-1", "t-1", "r-3", "t-3"));
    assertThat(timings.unpaired()).isEmpty();
    assertThat(timings.unclaimed()).as("the other pole set").isEqualTo(1);
    assertThat(pairs(timings("bramble", View.EVERYTHING, gateIn("s-2"))))
        .isEqualTo(Map.of("r-2", "t-2"));
    assertThat(pairs(gateIn("s-1"))).as("reps of the session before").isEmpty();
  }

  @Test
  void whoElseWasAskedAboutBeforeDoesNotShow() {
    List<Happening> told = new ArrayList<>(List.of(gateIn("s-2")));
    told.add(ENROLLED);
    Placement placement =
        new Placement(
            MemoryFacts.of(givenTraining(told.toArray(Happening[]::new)).facts()), View.EVERYTHING);
    ClubTimings shared = new ClubTimings(placement, minute(-100), minute(5_000));

    for (String dog : List.of("bramble", "juniper", "bramble")) {
      assertThat(shared.ofDog(dog, placement.ofDog(dog)))
          .isEqualTo(timings(dog, View.EVERYTHING, gateIn("s-2")));
    }
  }

  private static Happening[] gateIn(String session) {
    return new Happening[] {
      Happening.of(new DeviceAssigned("gate-1", null, "main", null)).at(0).as("assigned"),
      rep("r-1", rep -> rep.in(session)).at(10),
      rep("r-2", rep -> rep.in(session).by("bramble")).at(20),
      rep("r-3", rep -> rep.in(session)).at(30),
      rep("r-4", rep -> rep.in(session).on("second")).at(40),
      Gate.DUMB.at(10, "t-1"),
      Gate.DUMB.at(20, "t-2"),
      Gate.DUMB.at(30, "t-3"),
      Gate.DUMB.at(40, "t-4")
    };
  }

  @Test
  void aWearableIsOfTheDogThatItIsAssignedTo() {
    Happening toBramble =
        Happening.of(new DeviceAssigned("gate-1", "bramble", null, null)).at(0).as("a");
    Happening toJuniper =
        Happening.of(new DeviceAssigned("gate-1", "juniper", null, null)).at(15).as("b");

    assertThat(
            pairs(
                toBramble,
                toJuniper,
                rep("r-1").at(10),
                rep("r-2").at(20),
                Gate.DUMB.at(10, "t-1"),
                Gate.DUMB.at(20, "t-2")))
        .isEqualTo(Map.of("r-2", "t-2"));
  }

  @Test
  void mergedDogsShareTheirTimings() {
    assertThat(
            pairs(
                merged("bramble", "juniper"),
                rep("r-1").at(10),
                new Gate("s-1", "bramble", null, 1.5).at(10, "t-1")))
        .isEqualTo(Map.of("r-1", "t-1"));
  }

  @Test
  void whatDidNotRunWasNotTimed() {
    assertThat(
            pairs(
                rep("r-1", rep -> rep.ended(Outcome.NO_ATTEMPT)).at(10),
                Gate.OF_JUNIPER.at(10, "t-1")))
        .isEmpty();
  }

  /**
   * What arrived late says a wrong time of day; what arrived at once says how late the rest was.
   */
  @Test
  void theDevicesClockIsKnownFromWhatHadBeenRecordedQuickest() {
    Happening delayed = Gate.OF_JUNIPER.taken(10, 400, 10).as("t-1").recordedAt(300);
    Happening quick = Gate.OF_JUNIPER.taken(20, 420, 20).as("t-2").recordedAt(320);
    Happening quickest = Gate.OF_JUNIPER.taken(30, 430, 30).as("t-3").recordedAt(30);
    Happening[] told = {
      rep("r-1").at(10).recordedAt(10), rep("r-2").at(20).recordedAt(20), delayed, quick, quickest
    };
    Happening[] later = told.clone();
    later[4] = Gate.OF_JUNIPER.taken(700, 430, 700).as("t-3").recordedAt(700);

    assertThat(pairs(timings("juniper", new View(null, minute(500)), told)))
        .isEqualTo(Map.of("r-1", "t-1", "r-2", "t-2"));
    assertThat(pairs(timings("juniper", new View(null, minute(500)), later))).isEmpty();
    assertThat(pairs(later)).isEqualTo(Map.of("r-1", "t-1", "r-2", "t-2"));
  }

  @Test
  void whatHappenedLaterIsLeftOut() {
    Happening[] told = {
      rep("r-1").at(10),
      rep("r-2").at(20),
      Gate.OF_JUNIPER.at(10, "t-1"),
      Gate.of("r-2").at(20, "t-2")
    };

    assertThat(pairs(timings("juniper", new View(minute(15), null), told)))
        .isEqualTo(Map.of("r-1", "t-1"));
    assertThat(pairs(told)).isEqualTo(Map.of("r-1", "t-1", "r-2", "t-2"));
  }

  @Test
  void aClockThatBeginsAnewIsAnotherClock() {
    Happening before = Gate.OF_JUNIPER.taken(50, 50, 50).as("t-1").recordedAt(50);
    Happening after =
        Happening.of(
                new TimingRecorded(
                    "gate-1", 60, 5_000, 1_000, 2_500, null, "s-1", "juniper", null, null))
            .at(60)
            .recordedAt(60);

    PairedTimings timings =
        timings("juniper", View.EVERYTHING, rep("r-1").at(50), rep("r-2").at(60), before, after);
    assertThat(pairs(timings)).hasSize(2);
    assertThat(timings.devices().getFirst().restarts()).isEqualTo(1);
  }

  @Test
  void setupsStandForTimedRepsAsForAll() {
    PairedTimings timings =
        timings(
            "juniper",
            View.EVERYTHING,
            setup("s-1", tunnelAt(-45)).at(1),
            rep("r-1").at(10),
            Gate.OF_JUNIPER.in(1.2).at(10, "t-1"));

    assertThat(timings.reps().getFirst().seconds()).isEqualTo(1.2);
    assertThat(Pace.of(timings.reps(), minute(0), minute(100), ZoneOffset.UTC).kinds())
        .singleElement()
        .satisfies(pace -> assertThat(pace.kind().poles()).isEqualTo(4));
  }
}
