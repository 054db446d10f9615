package dev.poleward.domain.event;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** One go at the poles, and corrections of what was logged of it. */
public sealed interface RepEvent extends TrainingEvent {

  /** The rep that is spoken of. */
  String rep();

  record RepLogged(
      String rep,
      String session,
      String dog,
      Manoeuvre manoeuvre,
      Outcome outcome,
      RepDetails details)
      implements RepEvent {}

  /**
   * Corrects a logged rep, field by field.
   *
   * @param details the optional fields that change
   * @param cleared the optional fields that are taken away
   */
  record RepAmended(
      String rep,
      @Nullable String session,
      @Nullable String dog,
      @Nullable Manoeuvre manoeuvre,
      @Nullable Outcome outcome,
      RepDetails details,
      Set<RepField> cleared)
      implements RepEvent {

    /** Keeps the set from changing, in one order wherever it is written. */
    public RepAmended {
      cleared = cleared.isEmpty() ? Set.of() : Collections.unmodifiableSet(new TreeSet<>(cleared));
    }
  }
}
