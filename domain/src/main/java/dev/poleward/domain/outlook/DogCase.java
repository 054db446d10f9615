package dev.poleward.domain.outlook;

import dev.poleward.domain.event.DogEvent.DogCleared;
import dev.poleward.domain.event.DogEvent.DogRested;
import dev.poleward.domain.judgement.ExpectedRetention;
import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.programme.ProgrammesFollowed;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Registry;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A dog as it is looked ahead with.
 *
 * @param dog its id after merges
 * @param reps ascending by (time, id)
 * @param standing where its reps led to, under what it followed when
 * @param retention how it is expected to forget
 * @param rested its latest rest, if no clearance came after it
 */
public record DogCase(
    String dog,
    List<PlacedRep> reps,
    StandingHistory standing,
    ExpectedRetention retention,
    @Nullable Fact<DogRested> rested) {

  /** Keeps the reps from changing. */
  public DogCase {
    reps = List.copyOf(reps);
  }

  /**
   * A dog that is known.
   *
   * @param until what it follows then is what the answer is about; null for the latest
   */
  public static DogCase of(
      DogRecord known,
      Registry registry,
      List<PlacedRep> reps,
      @Nullable Instant until,
      ExpectedRetention retention) {
    String dog = registry.identity().of(known.registered().standing().event().dog());
    return new DogCase(
        dog,
        reps,
        StandingHistory.of(reps, ProgrammesFollowed.of(dog, registry), until),
        retention,
        resting(known.rested(), known.cleared()));
  }

  private static @Nullable Fact<DogRested> resting(
      @Nullable Fact<DogRested> rested, @Nullable Fact<DogCleared> cleared) {
    return rested != null && cleared != null && rested.moment().compareTo(cleared.moment()) < 0
        ? null
        : rested;
  }

  /** Whether it rests until further notice. */
  boolean restsWithoutEnd() {
    return rested != null && rested.event().until() == null;
  }

  /** The day from which it may train: today, or the end of its rest where that is later. */
  LocalDate trainsFrom(LocalDate today) {
    LocalDate until = rested == null ? null : rested.event().until();
    return until != null && until.isAfter(today) ? until : today;
  }
}
