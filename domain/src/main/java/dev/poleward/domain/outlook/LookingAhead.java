package dev.poleward.domain.outlook;

import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.outlook.Outlook.CannotTell;
import dev.poleward.domain.outlook.Outlook.Reason;
import dev.poleward.domain.outlook.Outlook.Told;
import dev.poleward.domain.outlook.RhythmAhead.StageAhead;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.ProgrammeInForce;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/**
 * Makes an outlook: fits the learner to the dog, draws twins of it, and lets a plain trainer teach
 * each of them at each rhythm. The luck follows from the dog's id and the programme's, so that the
 * answer follows from the set of events.
 */
public final class LookingAhead {

  private static final double[] RHYTHMS_USUAL = {1, 2, 3};

  private final DogCase dog;
  private final OutlookQuestion asked;

  private LookingAhead(DogCase dog, OutlookQuestion asked) {
    this.dog = dog;
    this.asked = asked;
  }

  /**
   * The outlook of a dog.
   *
   * @param club what its other dogs are like; not asked for where it cannot be told anyway
   */
  public static Outlook of(DogCase dog, OutlookQuestion asked, Supplier<ClubOfDogs> club) {
    return new LookingAhead(dog, asked).outlook(club);
  }

  private Outlook outlook(Supplier<ClubOfDogs> club) {
    return hindrance().<Outlook>map(CannotTell::new).orElseGet(() -> told(club.get()));
  }

  private Optional<Reason> hindrance() {
    if (dog.standing().inForce() instanceof ProgrammeInForce.Unreadable) {
      return Optional.of(Reason.NO_PROGRAMME);
    }
    if (dog.restsWithoutEnd()) {
      return Optional.of(Reason.RESTING);
    }
    List<PlacedRep> seen =
        dog.reps().stream()
            .filter(rep -> SeenRep.of(rep).filter(SeenRep::isEvidence).isPresent())
            .toList();
    if (seen.size() < asked.terms().repsMin()) {
      return Optional.of(Reason.TOO_FEW_REPS);
    }
    long sessions = seen.stream().map(PlacedRep::session).distinct().count();
    return sessions < asked.terms().sessionsMin()
        ? Optional.of(Reason.TOO_FEW_SESSIONS)
        : Optional.empty();
  }

  private Outlook told(ClubOfDogs club) {
    Programme programme = dog.standing().reading().programme();
    FittedLearner learner = FittedLearner.of(dog.reps(), club);
    Curriculum curriculum = Curriculum.of(programme);
    Notebook notebook =
        Notebook.of(
            curriculum,
            dog.standing()
                .reading()
                .standing(asked.agedTo(), dog.retention().of(dog.dog(), asked.agedTo())));
    LocalDate from = dog.trainsFrom(asked.today());
    Instant begin = begin(from);
    List<SimulatedDog> twins =
        learner.twins(asked.terms().runs(), begin, Seed.of(dog.dog(), programme));
    OwnRhythm own = OwnRhythm.of(dog.reps(), asked.agedTo());
    List<RhythmAhead> rhythms = new ArrayList<>();
    own.rhythm()
        .ifPresent(
            each -> rhythms.add(ahead(withReps(each), true, notebook, twins, begin, programme)));
    for (double often :
        asked.sessionsPerWeek() == null ? RHYTHMS_USUAL : new double[] {asked.sessionsPerWeek()}) {
      Rhythm other = withReps(new Rhythm(often, own.repsPerSession()));
      List<SimulatedDog> some = rhythms.isEmpty() ? twins : some(twins);
      rhythms.add(ahead(other, false, notebook, some, begin, programme));
    }
    return new Told(
        programme,
        from,
        traits(learner),
        learner.shareOfOwn(Trait.QUICKNESS),
        learner.reps(),
        club.dogs(),
        own,
        rhythms);
  }

  /** From all over the list: those that were taken for each other stand side by side. */
  private List<SimulatedDog> some(List<SimulatedDog> twins) {
    List<SimulatedDog> some = new ArrayList<>();
    int number = asked.terms().runsOfOthers();
    for (int i = 0; i < number; i++) {
      some.add(twins.get(i * twins.size() / number));
    }
    return some;
  }

  private Rhythm withReps(Rhythm rhythm) {
    return asked.repsPerSession() == null
        ? rhythm
        : new Rhythm(rhythm.sessionsPerWeek(), asked.repsPerSession());
  }

  /** The dog is as old as its last rep, even where that was told for a day to come. */
  private Instant begin(LocalDate from) {
    Instant begin =
        asked.agedTo().plus(Duration.ofDays(from.toEpochDay() - asked.today().toEpochDay()));
    Instant last = dog.reps().getLast().moment().time();
    return last.isAfter(begin) ? last : begin;
  }

  private static Map<Trait, Normal> traits(FittedLearner learner) {
    Map<Trait, Normal> traits = new EnumMap<>(Trait.class);
    for (Trait trait : Trait.values()) {
      traits.put(trait, learner.trait(trait));
    }
    return traits;
  }

  /** The same twins with the same luck at every rhythm, so that rhythms can be compared. */
  private RhythmAhead ahead(
      Rhythm rhythm,
      boolean isOwn,
      Notebook notebook,
      List<SimulatedDog> twins,
      Instant begin,
      Programme programme) {
    SplittableRandom luck = new SplittableRandom(Seed.of(dog.dog(), programme));
    Curriculum curriculum = notebook.curriculum();
    Duration horizon = asked.terms().horizon(rhythm);
    int stages = curriculum.stages().size();
    int[][] sessions = new int[stages + 1][twins.size()];
    for (int run = 0; run < twins.size(); run++) {
      int[] done =
          Ahead.sessionsToStages(
              twins.get(run).copy(), notebook.copy(), rhythm, begin, horizon, luck.split());
      int last = 0;
      for (int stage = 0; stage < stages; stage++) {
        sessions[stage][run] = done[stage];
        last = Math.max(last, done[stage]);
      }
      sessions[stages][run] = last;
    }
    List<StageAhead> ahead = new ArrayList<>();
    for (int stage = 0; stage < stages; stage++) {
      ahead.add(new StageAhead(curriculum.stages().get(stage), Reaching.of(sessions[stage])));
    }
    return new RhythmAhead(rhythm, isOwn, horizon, ahead, Reaching.of(sessions[stages]));
  }
}
