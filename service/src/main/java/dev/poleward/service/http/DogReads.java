package dev.poleward.service.http;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.ExpectedRetention;
import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.programme.ProgrammesFollowed;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.service.http.ClubReads.Reader;
import dev.poleward.service.render.DogInPicture;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The frame around reads that judge one dog as of a day of the club's: the view, the day, the dog
 * and its reps. Answers are remembered until something is recorded or the day is over. Safe for use
 * by many threads.
 */
final class DogReads {

  private final ClubReads reads;
  private final PlacedReps placed;
  private final ClubsForgetting clubs;
  private final LocalDays days;

  DogReads(ClubReads reads, PlacedReps placed, ClubsForgetting clubs, LocalDays days) {
    this.reads = reads;
    this.placed = placed;
    this.clubs = clubs;
    this.days = days;
  }

  /**
   * A dog that is looked at.
   *
   * @param asked its id as it was asked for
   * @param reps ascending by (time, id)
   * @param clubs how its club forgets
   */
  record Seen(
      Reader reader,
      View view,
      LocalDay day,
      String asked,
      DogRecord known,
      Placement placement,
      Registry registry,
      List<PlacedRep> reps,
      ClubsForgetting clubs) {

    /** Its id after merges. */
    String dog() {
      return placement.identity().of(asked);
    }

    /** Its whole record, judged under what it followed when, up to what it follows at a time. */
    StandingHistory history(@Nullable Instant until) {
      return StandingHistory.of(reps, ProgrammesFollowed.of(dog(), registry), until);
    }

    /** How it is expected to forget. For one thread, like the reading. */
    ExpectedRetention retention() {
      return clubs.of(reader.reading(), placement, day.zone());
    }

    /** Where a history has led to. */
    DogStanding standing(StandingHistory history, Instant agedTo) {
      return history.reading().standing(agedTo, retention().of(dog(), agedTo));
    }

    /** As a picture names it. */
    DogInPicture inPicture() {
      return new DogInPicture(asked, known.callName(), day.date());
    }
  }

  /** Reads what is asked besides the view; what it gives is called if nothing was wrong. */
  interface Asking {
    Function<Seen, Answer> read(Parameters parameters, LocalDay day);
  }

  /**
   * Answers a read of the dog in the path.
   *
   * @param besides names of the parameters that the route knows besides the view
   */
  Answer read(Call call, Set<String> besides, Asking asking) {
    Set<String> known = new HashSet<>(besides);
    known.addAll(Set.of("asOf", "knownAt"));
    return reads.remembered(
        call,
        (same, reader) -> day(same, reader, known).date().toString(),
        (same, reader) -> answer(same, reader, known, asking));
  }

  private LocalDay day(Call call, Reader reader, Set<String> known) {
    return days.of(reader, new Parameters(call, known).view());
  }

  private Answer answer(Call call, Reader reader, Set<String> known, Asking asking) {
    Parameters parameters = new Parameters(call, known);
    View view = parameters.view();
    LocalDay day = days.of(reader, view);
    Function<Seen, Answer> then = asking.read(parameters, day);
    Optional<Problem> problem = parameters.problem();
    if (problem.isPresent()) {
      return call.refused(problem.get());
    }
    String dog = call.inPath("dog");
    Placement placement = new Placement(reader.reading().facts(), view);
    Registry registry = new Registry(placement, view);
    Optional<DogRecord> record =
        reader.maySee(placement.identity(), dog) ? registry.dog(dog) : Optional.empty();
    if (record.isEmpty()) {
      return call.refused(ProblemKind.NOT_FOUND, "There is no such dog.");
    }
    List<PlacedRep> reps = placed.ofDog(reader.reading(), placement, view, dog);
    return then.apply(
        new Seen(reader, view, day, dog, record.get(), placement, registry, reps, clubs));
  }
}
