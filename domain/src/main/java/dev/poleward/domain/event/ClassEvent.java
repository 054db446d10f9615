package dev.poleward.domain.event;

import org.jspecify.annotations.Nullable;

/** Dogs taught together. */
public sealed interface ClassEvent extends TrainingEvent {

  /** The class that is spoken of; {@code class} is not a name in this language. */
  String group();

  record ClassFormed(
      String group, String name, @Nullable String instructor, @Nullable String schedule)
      implements ClassEvent {}

  record ClassJoined(String group, String dog) implements ClassEvent {}

  record ClassLeft(String group, String dog) implements ClassEvent {}
}
