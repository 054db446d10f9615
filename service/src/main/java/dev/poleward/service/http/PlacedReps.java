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
 */
final class PlacedReps {

  private static final int REPS_HELD_MAX = 50_000;

  /** All that the answer follows from: the position tells the set of the club's events. */
  private record Question(String club, long position, View view, String dog) {}

  private final Cache<Question, List<PlacedRep>> remembered =
      Caffeine.newBuilder()
          .maximumWeight(REPS_HELD_MAX)
          .weigher((Question _, List<PlacedRep> reps) -> reps.size() + 1)
          .build();

  List<PlacedRep> ofDog(Reader reader, Placement placement, View view, String dog) {
    Question question = new Question(reader.club(), reader.reading().position(), view, dog);
    List<PlacedRep> known = remembered.getIfPresent(question);
    if (known == null) {
      known = placement.ofDog(dog);
      remembered.put(question, known);
    }
    return known;
  }
}
