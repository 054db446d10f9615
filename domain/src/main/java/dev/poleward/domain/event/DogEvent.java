package dev.poleward.domain.event;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** What is said of a dog outside its reps. */
public sealed interface DogEvent extends TrainingEvent {

  /** The dog that is spoken of. */
  String dog();

  record DogRegistered(String dog, String callName, DogTraits traits) implements DogEvent {}

  /**
   * Corrects a registration, field by field.
   *
   * @param cleared the traits that are taken away
   */
  record DogAmended(String dog, @Nullable String callName, DogTraits traits, Set<DogTrait> cleared)
      implements DogEvent {

    /** Keeps the set from changing, in one order wherever it is written. */
    public DogAmended {
      cleared = cleared.isEmpty() ? Set.of() : Collections.unmodifiableSet(new TreeSet<>(cleared));
    }
  }

  /** Two registrations were one animal: all that is said of {@code dog} is about {@code into}. */
  record DogMerged(String dog, String into) implements DogEvent {}

  /** No training until a day, or until further notice. */
  record DogRested(String dog, @Nullable String reason, @Nullable LocalDate until)
      implements DogEvent {}

  /**
   * Cleared for training.
   *
   * @param by who cleared it, a veterinarian as a rule
   * @param limits what it is cleared up to, in the names of the club's care limits
   */
  record DogCleared(String dog, @Nullable String by, @Nullable Map<String, Object> limits)
      implements DogEvent {}
}
