package dev.poleward.domain.history;

import dev.poleward.domain.event.ClassEvent.ClassFormed;
import dev.poleward.domain.event.ClassEvent.ClassJoined;
import dev.poleward.domain.event.ClubEvent.ClubSettingsChanged;
import dev.poleward.domain.event.DeviceEvent.DeviceEnrolled;
import dev.poleward.domain.event.DeviceKind;
import dev.poleward.domain.event.DogEvent.DogRegistered;
import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.Envelope;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.ProgrammeEvent.PlanIssued;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.event.Stride;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.RewardLadder;
import dev.poleward.domain.programme.Stage;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * An evening a week of two dogs whom somebody really teaches: few drills, most reps clean, rewards
 * that fade, and at the end a dog that may miss, hop, slow down and flag. So rungs become solid,
 * slip and are due, rewards are faded and raised, and care has something to say. A device times the
 * clean runs; nobody says which reps they were, and what it takes for the time of day is wrong. For
 * one thread, used once.
 */
final class GeneratedTeaching {

  /** The last evening is the one of {@link HistoryGenerator#START}. */
  static final int EVENINGS = 12;

  private static final int REPS_MIN = 3;
  private static final int REPS_MAX = 16;
  private static final List<String> DOGS = GeneratedHistory.DOGS.subList(0, 2);
  private static final String GROUP = GeneratedHistory.CLASSES.getFirst();
  private static final String DEVICE = GeneratedHistory.DEVICES.getFirst();
  private static final OffsetDateTime BEGUN = HistoryGenerator.START.minusWeeks(EVENINGS - 1);
  private static final DogTraits GROWN =
      new DogTraits(BEGUN.toLocalDate().minusYears(4), null, null, null, null);

  private static final Duration CLOCK_IS_WRONG_BY = Duration.ofMinutes(6);
  private static final double RUN_MILLIS = 1_300;
  private static final double SLOW_RUN_MILLIS = 1_700;

  private final Pick pick;
  private final List<RecordedEvent> events = new ArrayList<>();

  /** Milliseconds that the clean runs took, by when they ended. */
  private final Map<OffsetDateTime, Double> runs = new TreeMap<>();

  GeneratedTeaching(long seed) {
    this.pick = new Pick(seed);
  }

  List<RecordedEvent> events() {
    for (int evening = 0; evening < EVENINGS; evening++) {
      tell(
          BEGUN.plusWeeks(evening),
          new SessionOpened(session(evening), null, GROUP, null, null, null));
    }
    tell(BEGUN, new DeviceEnrolled(DEVICE, DeviceKind.TIMER));
    tell(BEGUN, new ClassFormed(GROUP, "Evening", null, null));
    look(new GeneratedTalk(pick));
    for (String dog : DOGS) {
      tell(BEGUN, new DogRegistered(dog, "Sorrel", GROWN));
      tell(BEGUN, new ClassJoined(GROUP, dog));
      teach(dog);
    }
    time();
    GeneratedHistory.PLANS.forEach(
        plan ->
            tell(
                within(EVENINGS - 1),
                new PlanIssued(plan, pick.of(DOGS), Map.of("drills", List.of()))));
    return events;
  }

  /** What a club changes its mind about, and what is said of dogs between evenings. */
  private void look(GeneratedTalk talk) {
    tell(BEGUN, talk.clubRegistered());
    for (int change = 0; change < 4; change++) {
      String limit =
          pick.of(
              List.of("gapsPerSession", "heatCaution", "heatStop", "easeBackDays", "breakDays"));
      Map<String, Object> limits = Map.of(limit, 20L + pick.below(40));
      tell(within(pick.below(EVENINGS)), new ClubSettingsChanged(null, null, limits, null));
    }
    if (pick.onceIn(3)) {
      for (int word = 0; word < 4; word++) {
        tell(within(pick.below(EVENINGS)), pick.onceIn(2) ? talk.dogRested() : talk.dogCleared());
      }
    }
  }

  private static String session(int evening) {
    return "taught-" + evening;
  }

  private OffsetDateTime within(int evening) {
    return BEGUN.plusWeeks(evening).plusSeconds(pick.below(60 * HistoryGenerator.MINUTES));
  }

  private void teach(String dog) {
    List<Drill> drills = drills();
    int worseFrom = pick.onceIn(2) ? EVENINGS : EVENINGS - 2 - pick.below(2);
    int eveningsAStep = 2 + pick.below(6);
    int rep = 0;
    for (int evening = 0; evening < EVENINGS; evening++) {
      boolean flags = evening >= worseFrom;
      int until = rep + (flags ? REPS_MAX : REPS_MIN + pick.below(REPS_MAX - REPS_MIN));
      for (; rep < until; rep++) {
        run(
            "%s-%03d".formatted(dog, rep),
            dog,
            evening,
            pick.of(drills),
            evening / eveningsAStep,
            flags);
      }
    }
  }

  private void run(String rep, String dog, int evening, Drill drill, int step, boolean flags) {
    boolean clean = pick.below(10) < (flags ? 2 : 9);
    OffsetDateTime logged = within(evening);
    if (clean) {
      runs.put(logged.minusSeconds(8 + pick.below(4)), flags ? SLOW_RUN_MILLIS : RUN_MILLIS);
    }
    tell(
        logged,
        new RepLogged(
            rep,
            session(evening),
            dog,
            drill.handling().manoeuvre(),
            clean ? Outcome.CLEAN : Outcome.POPPED_OUT,
            details(drill, rewards(step), flags)));
  }

  /** Of the first rung of the default programme, and of one or both stages of the lenient one. */
  private List<Drill> drills() {
    List<Drill> drills = new ArrayList<>();
    Programme lenient = PlanQuestions.PROGRAMME;
    for (Stage stage : lenient.stages().subList(pick.below(2), 2)) {
      stage
          .pools()
          .forEach(pool -> drills.addAll(Collections.nCopies(2, pool.drills().getFirst())));
    }
    drills.addAll(DefaultProgramme.programme().inOrder().getFirst().pools().getFirst().drills());
    return drills;
  }

  private static List<Reward> rewards(int step) {
    return RewardLadder.USUAL
        .steps()
        .get(Math.min(step, RewardLadder.USUAL.steps().size() - 1))
        .rewards();
  }

  private RepDetails details(Drill drill, List<Reward> rewards, boolean flags) {
    return new RepDetails(
        drill.handling().dogSide(),
        drill.runUp().step(),
        drill.runUp().turn(),
        null,
        null,
        null,
        null,
        PlanQuestions.GROUND.laidFor(drill),
        null,
        null,
        rewards,
        null,
        null,
        null,
        flags ? 1 : 3,
        flags && pick.onceIn(3) ? Stride.HOP : Stride.SINGLE);
  }

  private void time() {
    int sequence = 0;
    for (Map.Entry<OffsetDateTime, Double> run : runs.entrySet()) {
      OffsetDateTime ended = run.getKey();
      long exit = Duration.between(BEGUN, ended).toMillis();
      long shown = exit + 1_000L * pick.below(20);
      int evening = (int) (Duration.between(BEGUN, ended.plusHours(1)).toDays() / 7);
      TimingRecorded timing =
          new TimingRecorded(
              DEVICE,
              sequence++,
              shown,
              exit - run.getValue(),
              exit,
              null,
              session(evening),
              null,
              null,
              null);
      Instant sent = BEGUN.plus(Duration.ofMillis(shown)).toInstant();
      tell(ended.plus(CLOCK_IS_WRONG_BY), timing, sent.plusMillis(pick.below(5_000)));
    }
  }

  private void tell(OffsetDateTime time, TrainingEvent event) {
    tell(time, event, HistoryGenerator.FIRST_RECORDED.plusSeconds(60L * pick.below(80)));
  }

  private void tell(OffsetDateTime time, TrainingEvent event, Instant recorded) {
    String id = "t-" + (char) ('a' + pick.below(26)) + events.size();
    Envelope envelope = new Envelope(id, "/apps/field-notes", time, null, null, Map.of());
    events.add(new RecordedEvent(envelope, recorded, event, null));
  }
}
