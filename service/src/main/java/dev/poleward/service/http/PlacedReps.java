package dev.poleward.service.http;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.View;
import dev.poleward.service.http.ClubReads.Reader;
import java.util.List;

/**
 * Remembers the placed reps of dogs that are asked for again before anything new is recorded. Holds
 * 50,000 reps at most. Safe for use by many threads.
 *
 * <p>Each question has one answer here, which the next one replaces. With the position in the
 * question, answers that are out of date would fill the room, and the cache, which keeps what was
 * asked for often, would turn away the new ones.
 */
final class PlacedReps {

  private static final int REPS_HELD_MAX = 50_000;

  private record Question(String club, View view, String dog) {}

  /** All that the answer follows from: the position tells the set of the club's events. */
  private record Known(long position, List<PlacedRep> reps) {}

  private final Cache<Question, Known> remembered =
      Caffeine.newBuilder()
          .maximumWeight(REPS_HELD_MAX)
          .weigher((Question _, Known known) -> known.reps().size() + 1)
          .build();

  List<PlacedRep> ofDog(Reader reader, Placement placement, View view, String dog) {
    Question question = new Question(reader.club(), view, dog);
    long position = reader.reading().position();
    Known known = remembered.getIfPresent(question);
    if (known == null || known.position() != position) {
      known = new Known(position, placement.ofDog(dog));
      remembered.put(question, known);
    }
    return known.reps();
  }
}
