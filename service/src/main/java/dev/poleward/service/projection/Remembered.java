package dev.poleward.service.projection;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.ToLongBiFunction;

/**
 * Remembers what was made of a club's events for those who ask again before it could have changed.
 * The one way to do so: for finished answers, for placed reps and for whatever else costs something
 * to make. Safe for use by many threads; two who ask at once may both make it.
 *
 * <p>Each question of a club has one answer here, which the next one replaces. It counts only at
 * the position that it was made at, and beside what else it follows from. With the position in the
 * question, answers that are out of date would fill the room, and the memory, which keeps what was
 * asked for often, would turn away the new ones.
 *
 * @param <Q> what is asked, but for the club; told apart by {@code equals}
 * @param <T> what is made; many threads may hold the same, so it is never changed
 */
public final class Remembered<Q, T> {

  private record Question<Q>(String club, Q asked) {}

  /** All that it follows from besides the question: the position tells the set of the events. */
  private record Known<T>(long position, String besides, T made) {}

  /** About what a question and the record of its answer take themselves. */
  private static final int BYTES_BESIDES = 256;

  private final Cache<Question<Q>, Known<T>> remembered;

  /**
   * A memory that is empty.
   *
   * @param bytesMax of all that is held, questions included; what goes over drops what is asked for
   *     least
   * @param bytes about how many a question and what is made for it take in memory
   */
  public Remembered(long bytesMax, ToLongBiFunction<Q, T> bytes) {
    remembered =
        Caffeine.newBuilder()
            .maximumWeight(bytesMax)
            .weigher(
                (Question<Q> question, Known<T> known) ->
                    weight(bytes.applyAsLong(question.asked(), known.made())))
            // What goes over is dropped before the one who caused it goes on.
            .executor(Runnable::run)
            .build();
  }

  private static int weight(long bytes) {
    return (int) Math.min(Integer.MAX_VALUE, bytes + BYTES_BESIDES);
  }

  /** What is asked for, made unless it is known; for what follows from the club's events alone. */
  public T of(Reading reading, Q asked, Supplier<T> made) {
    return known(reading, asked, "").orElseGet(() -> kept(reading, asked, "", made.get()));
  }

  /**
   * What was made for this question at the reading's position; empty when it has to be made anew.
   *
   * @param besides what it follows from besides the club's events, such as the day; may be empty
   */
  public Optional<T> known(Reading reading, Q asked, String besides) {
    return known(reading.club(), reading.position(), asked, besides);
  }

  /** Keeps what was made for this question at the reading's position, and gives it back. */
  public T kept(Reading reading, Q asked, String besides, T made) {
    return kept(reading.club(), reading.position(), asked, besides, made);
  }

  Optional<T> known(String club, long position, Q asked, String besides) {
    Known<T> known = remembered.getIfPresent(new Question<>(club, asked));
    return known != null && known.position() == position && known.besides().equals(besides)
        ? Optional.of(known.made())
        : Optional.empty();
  }

  T kept(String club, long position, Q asked, String besides, T made) {
    remembered.put(new Question<>(club, asked), new Known<>(position, besides, made));
    return made;
  }
}
