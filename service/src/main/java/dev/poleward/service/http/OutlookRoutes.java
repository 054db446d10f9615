package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import dev.poleward.domain.care.CareNote;
import dev.poleward.domain.care.CarePermit;
import dev.poleward.domain.care.CareQuestion;
import dev.poleward.domain.care.CareReview;
import dev.poleward.domain.care.Conditions;
import dev.poleward.domain.care.Severity;
import dev.poleward.domain.care.Trained;
import dev.poleward.domain.event.AimEvent.GoalSet;
import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.outlook.ClubReading;
import dev.poleward.domain.outlook.DogCase;
import dev.poleward.domain.outlook.Goal;
import dev.poleward.domain.outlook.LookingAhead;
import dev.poleward.domain.outlook.Outlook;
import dev.poleward.domain.outlook.OutlookQuestion;
import dev.poleward.domain.outlook.OutlookTerms;
import dev.poleward.domain.outlook.Panel;
import dev.poleward.domain.outlook.Rhythm;
import dev.poleward.domain.outlook.StartingStage;
import dev.poleward.domain.planning.Limits;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.ProgrammeInForce;
import dev.poleward.domain.record.Fact;
import dev.poleward.service.http.DogReads.Seen;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** What lies ahead of a dog, and where one that nobody knows might start. Safe for many threads. */
final class OutlookRoutes {

  /** Panels of so many programmes are kept: each takes a while to put together. */
  private static final int PANELS_HELD_MAX = 16;

  private final DogReads dogs;
  private final Cache<Programme, Panel> panels =
      Caffeine.newBuilder().maximumSize(PANELS_HELD_MAX).build();
  private final OutlookShape shape = new OutlookShape();
  private final StartingStageShape startingStage = new StartingStageShape();
  private final GoalShape goals = new GoalShape();

  OutlookRoutes(DogReads dogs) {
    this.dogs = dogs;
  }

  /** {@code GET …/dogs/{dog}/outlook}. */
  Answer outlook(Call call) {
    return dogs.read(
        call,
        Set.of("sessionsPerWeek", "repsPerSession"),
        (parameters, day) -> {
          OutlookQuestion asked =
              asked(
                  day,
                  parameters.number("sessionsPerWeek", Rhythm.SESSIONS_MIN, Rhythm.SESSIONS_MAX),
                  (int) parameters.whole("repsPerSession", 1, Rhythm.REPS_MAX, 0));
          return dog -> outlook(dog, asked);
        });
  }

  private Answer outlook(Seen dog, OutlookQuestion asked) {
    DogCase ofDog = caseOf(dog);
    Outlook outlook = outlookOf(dog, ofDog, asked);
    List<Goal> answered = Goal.of(Goal.standing(dog.dog(), dog.registry()), outlook, ofDog, asked);
    return Answer.json(200, shape.of(dog.asked(), asked, outlook, goals.of(answered, outlook)));
  }

  /** {@code GET …/dogs/{dog}/goals}. */
  Answer goals(Call call) {
    return dogs.read(
        call,
        Set.of(),
        (_, day) -> {
          OutlookQuestion asked = asked(day, null, 0);
          return dog -> goals(dog, asked);
        });
  }

  private Answer goals(Seen dog, OutlookQuestion asked) {
    List<Fact<GoalSet>> standing = Goal.standing(dog.dog(), dog.registry());
    if (standing.isEmpty()) {
      return Answer.json(200, goals.of(dog.asked(), asked, List.of()));
    }
    DogCase ofDog = caseOf(dog);
    Outlook outlook = outlookOf(dog, ofDog, asked);
    return Answer.json(
        200,
        goals.of(dog.asked(), asked, goals.of(Goal.of(standing, outlook, ofDog, asked), outlook)));
  }

  private static OutlookQuestion asked(
      LocalDay day, @Nullable Double sessionsPerWeek, int repsPerSession) {
    return new OutlookQuestion(
        day.date(),
        day.end(),
        sessionsPerWeek,
        repsPerSession == 0 ? null : repsPerSession,
        OutlookTerms.USUAL);
  }

  private static DogCase caseOf(Seen dog) {
    return DogCase.of(dog.known(), dog.registry(), dog.reps(), dog.view().asOf(), dog.retention());
  }

  private static Outlook outlookOf(Seen dog, DogCase ofDog, OutlookQuestion asked) {
    return LookingAhead.of(
        ofDog,
        asked,
        () ->
            ClubReading.others(
                dog.dog(), dog.reader().reading().facts(), dog.placement(), dog.registry()));
  }

  /** {@code GET …/dogs/{dog}/starting-stage}. */
  Answer startingStage(Call call) {
    return dogs.read(call, Set.of(), (_, day) -> dog -> Answer.json(200, startingStage(dog, day)));
  }

  private ObjectNode startingStage(Seen dog, LocalDay day) {
    Optional<Programme> programme = programme(dog);
    if (programme.isEmpty()) {
      return startingStage.withoutProgramme(dog.asked(), day);
    }
    CareQuestion question = Care.question(dog.registry(), Conditions.NOT_SAID, day);
    CarePermit rested = CareReview.of(dog.known(), Trained.NOTHING, question);
    List<String> stops =
        rested.notes().stream()
            .filter(note -> note.severity() == Severity.STOP)
            .map(CareNote::text)
            .toList();
    StartingStage stage =
        StartingStage.of(panel(programme.get()), dog.reps(), allowed(dog, rested, question));
    return startingStage.of(dog.asked(), day, stage, stops);
  }

  /**
   * What the dog may run for its age and its health, signs that something may hurt among them. The
   * load of the day is another matter: it passes.
   */
  private static Predicate<Drill> allowed(Seen dog, CarePermit rested, CareQuestion question) {
    boolean angleWork = Care.review(dog, question).angleWork();
    Set<EntrySide> sides = angleWork ? Set.of(EntrySide.values()) : Set.of();
    return Limits.of(1, rested, sides, false)::allow;
  }

  private Panel panel(Programme programme) {
    return panels.get(programme, Panel::of);
  }

  /** What is followed; empty when its document has faults. */
  private static Optional<Programme> programme(Seen dog) {
    StandingHistory history = dog.history(dog.view().asOf());
    return history.inForce() instanceof ProgrammeInForce.Unreadable
        ? Optional.empty()
        : Optional.of(history.reading().programme());
  }
}
