package dev.poleward.service.http;

import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.View;
import dev.poleward.service.projection.Reading;
import dev.poleward.service.projection.Remembered;
import java.util.List;

/**
 * The placed reps of a dog, shared by all reads of it at one position of the club, whatever they
 * make of them. Safe for use by many threads.
 */
final class PlacedReps {

  private static final long BYTES_HELD_MAX = 32L << 20;

  /** About what a placed rep takes with all that it alone refers to. */
  private static final int BYTES_OF_REP = 1_024;

  private record Question(View view, String dog) {}

  private final Remembered<Question, List<PlacedRep>> remembered =
      new Remembered<>(BYTES_HELD_MAX, (_, reps) -> (long) reps.size() * BYTES_OF_REP);

  List<PlacedRep> ofDog(Reading reading, Placement placement, View view, String dog) {
    return remembered.of(reading, new Question(view, dog), () -> placement.ofDog(dog));
  }
}
