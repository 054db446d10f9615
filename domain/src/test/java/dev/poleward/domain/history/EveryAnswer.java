package dev.poleward.domain.history;

import dev.poleward.domain.care.CareLimits;
import dev.poleward.domain.care.CareQuestion;
import dev.poleward.domain.care.CareReview;
import dev.poleward.domain.care.Trained;
import dev.poleward.domain.event.AimEvent.TrialRun;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.judgement.ClubForgetting;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.DrillCounts;
import dev.poleward.domain.judgement.ExpectedRetention;
import dev.poleward.domain.judgement.FaultReview;
import dev.poleward.domain.judgement.RecordedReturns;
import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.mastery.MasteryCurve;
import dev.poleward.domain.mastery.MasteryQuestion;
import dev.poleward.domain.outlook.ClubReading;
import dev.poleward.domain.outlook.DogCase;
import dev.poleward.domain.outlook.Goal;
import dev.poleward.domain.outlook.Homework;
import dev.poleward.domain.outlook.LookingAhead;
import dev.poleward.domain.outlook.Outlook;
import dev.poleward.domain.outlook.Season;
import dev.poleward.domain.outlook.StartingStage;
import dev.poleward.domain.outlook.Trials;
import dev.poleward.domain.pace.ClubTimings;
import dev.poleward.domain.pace.Pace;
import dev.poleward.domain.pace.PairedTimings;
import dev.poleward.domain.planning.CleanForecast;
import dev.poleward.domain.programme.ProgrammesFollowed;
import dev.poleward.domain.record.Announcement;
import dev.poleward.domain.record.DaySpan;
import dev.poleward.domain.record.Digest;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.Filing;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.References;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.SuspectedDuplicates;
import dev.poleward.domain.record.View;
import dev.poleward.domain.record.Waiting;
import dev.poleward.domain.report.ClassReport;
import dev.poleward.domain.report.Overview;
import dev.poleward.domain.report.ReportSources;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Everything that can be asked of a record in one view, about everything that any of its events
 * names: what two readings of the same events are compared by.
 */
public final class EveryAnswer {

  private static final int LIMIT = 10_000;
  private static final Duration SUSPECTED_WITHIN = Duration.ofMinutes(2);

  private static final CareQuestion CARE =
      new CareQuestion(
          CareLimits.USUAL,
          PlanQuestions.HOT_AND_WET,
          CurveQuestions.AGED_TO.atZone(ZoneOffset.UTC).toLocalDate(),
          ZoneOffset.UTC);

  private final Facts facts;
  private final Placement placement;
  private final Registry registry;
  private final ClubTimings clubTimings;
  private final ExpectedRetention retention;
  private final Map<String, Object> answers = new TreeMap<>();

  private EveryAnswer(Facts facts, View view) {
    this.facts = facts;
    this.placement = new Placement(facts, view);
    this.registry = new Registry(placement, view);
    this.retention =
        new ClubForgetting(
            new RecordedReturns(facts, view), placement.identity(), view, ZoneOffset.UTC);
    this.clubTimings = new ClubTimings(placement, Instant.EPOCH, CurveQuestions.AGED_TO);
  }

  /** The answers that depend on the view, by question. */
  public static Map<String, Object> of(Facts facts, View view) {
    EveryAnswer every = new EveryAnswer(facts, view);
    named(facts).forEach(every::ask);
    every.answers.put("club", every.registry.club());
    every.answers.put("waiting", Waiting.of(facts, view));
    every.answers.put(
        "overview", Overview.of(every.reportOf(AheadQuestions.DAY), "", Overview.DOGS_MAX));
    return every.answers;
  }

  /** The answers that are the same in every view, by question. */
  public static Map<String, Object> ofAnyView(Facts facts) {
    Map<String, Object> answers = new TreeMap<>();
    for (EntityRef entity : named(facts)) {
      if (entity.kind() == EntityKind.EVENT) {
        answers.put("event " + entity.id(), facts.event(entity.id()));
      }
    }
    for (EntityKind kind : EntityKind.values()) {
      answers.put("announced " + kind, facts.announced(kind, "", LIMIT));
    }
    answers.put("sessions", facts.sessionsOpened(null, LIMIT));
    answers.put("digest", digest(facts));
    return answers;
  }

  /** Those questions that were answered differently, with both answers. */
  public static List<String> differences(Map<String, Object> one, Map<String, Object> other) {
    Set<String> questions = new TreeSet<>(one.keySet());
    questions.addAll(other.keySet());
    return questions.stream()
        .filter(question -> !Objects.equals(one.get(question), other.get(question)))
        .map(question -> question + ": " + one.get(question) + " or " + other.get(question))
        .toList();
  }

  private static Set<EntityRef> named(Facts facts) {
    Set<EntityRef> named = new TreeSet<>();
    facts.all(
        fact -> {
          named.addAll(References.of(fact.event()));
          EntityRef announced = Announcement.of(fact.event());
          if (announced != null) {
            named.add(announced);
          }
          EntityRef filed = Filing.of(fact.event());
          if (filed != null) {
            named.add(filed);
          }
        });
    return named;
  }

  private ReportSources reportOf(DaySpan span) {
    return new ReportSources(
        facts, placement, registry, span, CareLimits.USUAL, placement::ofDog, retention);
  }

  private void ask(EntityRef entity) {
    String id = entity.id();
    switch (entity.kind()) {
      case DOG -> {
        answers.put("dog " + id, registry.dog(id));
        answers.put("identity of dog " + id, placement.identity().of(id));
        answers.put("registrations of dog " + id, placement.identity().group(id));
        List<PlacedRep> reps = placement.ofDog(id);
        answers.put("reps of dog " + id, reps);
        for (MasteryQuestion question : CurveQuestions.ALL) {
          answers.put(
              "curve of dog " + id + " " + question,
              MasteryCurve.of(reps, question, CurveQuestions.AGED_TO));
        }
        answers.put("drills that dog " + id + " ran", DrillCounts.of(reps));
        answers.put(
            "faults of dog " + id, FaultReview.of(reps, Instant.EPOCH, CurveQuestions.AGED_TO));
        PairedTimings timings = clubTimings.ofDog(id, reps);
        answers.put("timed reps of dog " + id, timings.reps());
        answers.put("timings of dog " + id + " that belong to no rep", timings.unpaired());
        answers.put(
            "timings left over beside dog " + id, List.of(timings.further(), timings.unclaimed()));
        answers.put("clocks that timed dog " + id, timings.devices());
        answers.put(
            "pace of dog " + id,
            Pace.of(timings.reps(), Instant.EPOCH, CurveQuestions.AGED_TO, ZoneOffset.UTC));
        ProgrammesFollowed followed = ProgrammesFollowed.of(id, registry);
        answers.put("programmes of dog " + id, followed);
        List<Instant> slips = reps.isEmpty() ? List.of() : stand(id, reps, followed);
        registry
            .dog(id)
            .ifPresent(
                known -> {
                  answers.put(
                      "care of dog " + id,
                      CareReview.of(known, new Trained(reps, timings.reps(), slips), CARE));
                  lookAhead(id, known, reps);
                });
      }
      case SESSION -> {
        answers.put("session " + id, registry.session(id));
        List<PlacedRep> reps = placement.inSession(id);
        answers.put("reps in session " + id, reps);
        answers.put(
            "suspected duplicates in session " + id,
            SuspectedDuplicates.among(reps, SUSPECTED_WITHIN));
      }
      case REP -> {
        answers.put("rep " + id, placement.ofRep(id));
        answers.put("loggings of rep " + id, placement.loggings(id));
      }
      case CLASS -> {
        answers.put("class " + id, registry.group(id));
        answers.put("memberships of class " + id, registry.memberships(id));
        answers.put(
            "report of class " + id,
            ReportInBrief.of(ClassReport.whole(id, reportOf(AheadQuestions.SPAN))));
      }
      case GROUND -> answers.put("ground " + id, registry.ground(id));
      case HANDLER -> answers.put("handler " + id, registry.handler(id));
      case PROGRAMME -> answers.put("programme " + id, registry.programme(id));
      case DEVICE -> answers.put("device " + id, registry.device(id));
      case PLAN -> answers.put("plan " + id, registry.plan(id));
      case CLUB, KEY, EVENT -> {}
    }
  }

  /** Answers where a dog stands, and gives what slips. */
  private List<Instant> stand(String id, List<PlacedRep> reps, ProgrammesFollowed followed) {
    DogStanding standing =
        StandingHistory.of(reps, followed, null)
            .reading()
            .standing(CurveQuestions.AGED_TO, retention.of(id, CurveQuestions.AGED_TO));
    answers.put(
        "standing of dog " + id,
        StandingInBrief.of(standing, CleanForecast.of(reps, CurveQuestions.AGED_TO)));
    return standing.slips();
  }

  private void lookAhead(String id, DogRecord known, List<PlacedRep> reps) {
    String dog = placement.identity().of(id);
    DogCase ofDog = DogCase.of(known, registry, reps, null, retention);
    Outlook outlook =
        LookingAhead.of(
            ofDog,
            AheadQuestions.OF_ANY_REPS,
            () -> ClubReading.others(dog, facts, placement, registry));
    answers.put("outlook of dog " + id, outlook);
    answers.put(
        "goals of dog " + id,
        Goal.of(Goal.standing(dog, registry), outlook, ofDog, AheadQuestions.OF_ANY_REPS));
    answers.put(
        "homework of dog " + id,
        Homework.of(dog, registry, reps, AheadQuestions.TODAY, ZoneOffset.UTC));
    answers.put("trials of dog " + id, Trials.of(dog, registry, reps));
    answers.put(
        "season of dog " + id,
        Season.of(
            reps,
            registry.aims(dog, TrialRun.class),
            ofDog
                .standing()
                .reading()
                .standing(AheadQuestions.AGED_TO, retention.of(dog, AheadQuestions.AGED_TO)),
            AheadQuestions.SPAN));
    answers.put(
        "starting stage of dog " + id, StartingStage.of(AheadQuestions.PANEL, reps, _ -> true));
  }

  private static String digest(Facts facts) {
    List<Fact<?>> covered = new ArrayList<>();
    facts.all(
        fact -> {
          if (Digest.covers(fact.event())) {
            covered.add(fact);
          }
        });
    covered.sort(Comparator.comparing(Fact::id));
    Digest digest = new Digest();
    for (Fact<?> fact : covered) {
      TrainingEvent event = fact.event();
      digest.add(fact.id(), event.getClass().getSimpleName(), fact.time(), event.toString());
    }
    return digest.events() + " " + digest.value();
  }
}
