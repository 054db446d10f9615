package dev.poleward.service.http;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import dev.poleward.service.access.Authentication.Identity;
import dev.poleward.service.access.ClubIdentity;
import dev.poleward.service.access.HostIdentity;
import dev.poleward.service.http.ClubReads.Reader;
import java.util.function.Supplier;

/**
 * Remembers finished answers that are asked for again before anything changed. Holds 8 MiB of them
 * at most. Safe for use by many threads.
 *
 * <p>Each question has one answer here, which the next one replaces; {@link PlacedReps} says why
 * the position is not part of the question. Who may see everything shares answers; who may not,
 * sees those that were made for the same key.
 */
final class RememberedAnswers {

  private static final int BYTES_HELD_MAX = 8 << 20;

  /** About what an answer takes besides its body. */
  private static final int BYTES_BESIDES = 512;

  private record Question(String club, String form, String asked, String key) {}

  /** All that the answer follows from besides the question. */
  private record Known(long position, String besides, Answer answer) {}

  private final Cache<Question, Known> remembered =
      Caffeine.newBuilder()
          .maximumWeight(BYTES_HELD_MAX)
          .weigher((Question _, Known known) -> known.answer().body().length + BYTES_BESIDES)
          .build();

  /**
   * The answer, made unless it is known.
   *
   * @param besides what it follows from besides the question and the club's position, as in its tag
   */
  Answer of(Call call, Reader reader, String besides, Supplier<Answer> made) {
    Question question =
        new Question(reader.club(), call.form(), call.question(), narrowedTo(reader));
    long position = reader.reading().position();
    Known known = remembered.getIfPresent(question);
    if (known != null && known.position() == position && known.besides().equals(besides)) {
      return known.answer();
    }
    Answer answer = made.get();
    if (answer.status() == 200) {
      remembered.put(question, new Known(position, besides, answer));
    }
    return answer;
  }

  private static String narrowedTo(Reader reader) {
    return reader.mayTouchEveryDog() ? "" : key(reader.identity());
  }

  private static String key(Identity identity) {
    return switch (identity) {
      case HostIdentity _ -> "";
      case ClubIdentity club -> club.key();
    };
  }
}
