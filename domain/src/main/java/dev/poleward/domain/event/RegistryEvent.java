package dev.poleward.domain.event;

import org.jspecify.annotations.Nullable;

/** People and places announced to the club. */
public sealed interface RegistryEvent extends TrainingEvent {

  /**
   * A place to train.
   *
   * @param length metres
   * @param width metres
   */
  record GroundRegistered(
      String ground,
      @Nullable String name,
      @Nullable Double length,
      @Nullable Double width,
      @Nullable String surface)
      implements RegistryEvent {}

  /** A person who handles, teaches or observes. Name and mail address are sealed, not here. */
  record HandlerRegistered(String handler) implements RegistryEvent {}
}
