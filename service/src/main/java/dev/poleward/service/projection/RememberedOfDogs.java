package dev.poleward.service.projection;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Reach;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.service.projection.Reading.FeedEvent;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;

/**
 * Remembers what was made of the record of each dog of a club, until something is recorded that
 * could change it: the feed since then is looked through, and {@link Reach} says whom it concerns.
 * So one who asks about many dogs makes few of them anew. What is answered is what would be made
 * anew, whatever is remembered. Safe for use by many threads; two who ask at once may both make it.
 *
 * @param <T> what is made of what a dog ran and followed, in an order of time; the part of it
 *     before an instant follows from what happened before that; many threads may hold the same
 */
public final class RememberedOfDogs<T> {

  /** After more news than this everything is made anew. */
  static final int NEWS_MAX = 2_000;

  /** How it is made, in a view that ends nowhere. */
  public interface Making<T> {

    /** The dogs of a club that are looked at, by their ids after merges. */
    List<String> dogs(Placement placement, Registry registry);

    /** What is made of one of them. */
    T made(Placement placement, Registry registry, String dog);
  }

  /** The dogs of a club as one reading has them. For one thread, while the reading is open. */
  public interface Dogs<T> {

    /** Those that are looked at. */
    List<String> dogs();

    /**
     * What was made of one.
     *
     * @param before only what lies before this instant is right
     */
    T of(String dog, Instant before);
  }

  private record Question(String club, @Nullable Instant knownAt) {}

  /**
   * What was made of a dog.
   *
   * @param since the first position that it is right at
   * @param before only what lies before this instant is right, at the latest position
   */
  private record OfDog<T>(T made, long since, Instant before) {}

  private record Listed(List<String> dogs, long since) {}

  /** All that is known of a club, and up to which position. Never changed. */
  private record Known<T>(long position, @Nullable Listed listed, Map<String, OfDog<T>> dogs) {}

  /** About what a dog takes besides what is made of it. */
  private static final int BYTES_OF_DOG = 128;

  private final Making<T> making;
  private final Cache<Question, Known<T>> remembered;

  /**
   * A memory that is empty.
   *
   * @param bytesMax of all that is held; what goes over drops what is asked for least
   * @param bytes about how many one that is made takes in memory
   */
  public RememberedOfDogs(Making<T> making, long bytesMax, ToLongFunction<T> bytes) {
    this.making = making;
    this.remembered =
        Caffeine.newBuilder()
            .maximumWeight(bytesMax)
            .weigher((Question _, Known<T> known) -> weight(known, bytes))
            .executor(Runnable::run)
            .build();
  }

  private static <T> int weight(Known<T> known, ToLongFunction<T> bytes) {
    long weight = BYTES_OF_DOG;
    for (OfDog<T> dog : known.dogs().values()) {
      weight += BYTES_OF_DOG + bytes.applyAsLong(dog.made());
    }
    return (int) Math.min(Integer.MAX_VALUE, weight);
  }

  /**
   * The dogs of the reading's club.
   *
   * @param knownAt as far as was known then; null for all that is known
   */
  public Dogs<T> at(Reading reading, @Nullable Instant knownAt) {
    return new At(reading, new View(null, knownAt));
  }

  private void keep(Question question, Known<T> known) {
    remembered
        .asMap()
        .merge(question, known, (one, other) -> one.position() > other.position() ? one : other);
  }

  private final class At implements Dogs<T> {

    private final Reading reading;
    private final View view;
    private final Question question;
    private final Placement placement;
    private final Registry registry;
    private final Known<T> known;
    private final boolean isLatest;
    private final Map<String, OfDog<T>> dogs;
    private @Nullable Listed listed;

    At(Reading reading, View view) {
      this.reading = reading;
      this.view = view;
      this.question = new Question(reading.club(), view.knownAt());
      this.placement = new Placement(reading.facts(), view);
      this.registry = new Registry(placement, view);
      Known<T> before = remembered.getIfPresent(question);
      this.known =
          before == null ? new Known<>(reading.position(), null, Map.of()) : broughtOn(before);
      this.isLatest = known.position() == reading.position();
      this.dogs = new HashMap<>(known.dogs());
      this.listed = known.listed();
      if (before != null && before.position() < known.position()) {
        // So that nobody looks through the same news again.
        RememberedOfDogs.this.keep(question, known);
      }
    }

    /** What is left of it after the news; as it is where it is ahead of this reading. */
    private Known<T> broughtOn(Known<T> before) {
      long news = reading.position() - before.position();
      if (news <= 0) {
        return before;
      }
      if (news > NEWS_MAX) {
        return new Known<>(reading.position(), null, Map.of());
      }
      Known<T> after = before;
      for (FeedEvent event : reading.feed(before.position(), NEWS_MAX)) {
        if (view.knew(event.recorded())) {
          after = after(after, event);
        }
      }
      return new Known<>(reading.position(), after.listed(), after.dogs());
    }

    private Known<T> after(Known<T> before, FeedEvent event) {
      Instant time = event.envelope().time().toInstant();
      return switch (Reach.of(event.event(), time, reading.facts())) {
        case Reach.Nothing _ -> before;
        case Reach.OfDogs(var registrations, Instant from) -> {
          Map<String, OfDog<T>> dogs = new HashMap<>(before.dogs());
          registrations.forEach(registration -> cut(dogs, registration, from));
          yield new Known<>(before.position(), before.listed(), dogs);
        }
        case Reach.OfRegistry(String registration) -> {
          Map<String, OfDog<T>> dogs = new HashMap<>(before.dogs());
          cut(dogs, registration, Instant.MIN);
          yield new Known<>(before.position(), null, dogs);
        }
        case Reach.OfClub _ -> new Known<>(before.position(), null, Map.of());
      };
    }

    private void cut(Map<String, OfDog<T>> dogs, String registration, Instant from) {
      dogs.computeIfPresent(
          placement.identity().of(registration),
          (_, dog) ->
              from.isBefore(dog.before()) ? new OfDog<>(dog.made(), dog.since(), from) : dog);
    }

    @Override
    public List<String> dogs() {
      Listed here = listed;
      if (here == null || here.since() > reading.position()) {
        here = new Listed(making.dogs(placement, registry), reading.position());
        listed = here;
        keep();
      }
      return here.dogs();
    }

    @Override
    public T of(String dog, Instant before) {
      OfDog<T> here = dogs.get(dog);
      if (here == null || here.since() > reading.position() || here.before().isBefore(before)) {
        here = new OfDog<>(making.made(placement, registry, dog), reading.position(), Instant.MAX);
        dogs.put(dog, here);
        keep();
      }
      return here.made();
    }

    /** A reading that others have gone past keeps what it made to itself. */
    private void keep() {
      if (isLatest) {
        RememberedOfDogs.this.keep(
            question, new Known<>(reading.position(), listed, Map.copyOf(dogs)));
      }
    }
  }
}
