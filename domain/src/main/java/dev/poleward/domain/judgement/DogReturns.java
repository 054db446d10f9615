package dev.poleward.domain.judgement;

import dev.poleward.domain.programme.ProgrammesFollowed;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The returns of a dog from first to last, and what those before some time say. A return follows
 * from the reps up to it and from what was followed until then, so that the returns before a time
 * are those of a record that ends there. Safe for use by many threads.
 */
public final class DogReturns {

  private record Told(int returns, DogSay say) {}

  private final List<TimedReturn> returns;

  private static final int TOLD_MAX = 4;

  /** The last few that were asked for: days go by without a return, and a fit takes its time. */
  private volatile List<Told> told = List.of();

  /**
   * Keeps returns.
   *
   * @param returns ascending by time
   */
  public DogReturns(List<TimedReturn> returns) {
    this.returns = List.copyOf(returns);
  }

  /**
   * Reads a dog's whole record.
   *
   * @param placement in a view that ends nowhere
   * @param registry in the same view
   * @param dog its id after merges
   */
  public static DogReturns of(Placement placement, Registry registry, String dog) {
    return new DogReturns(
        StandingHistory.of(placement.ofDog(dog), ProgrammesFollowed.of(dog, registry), null)
            .reading()
            .returns());
  }

  /** How many there are. */
  public int size() {
    return returns.size();
  }

  /** What those before some instant say: of many the latest; empty when there are none. */
  public Optional<DogSay> before(Instant time) {
    int before = countBefore(time);
    if (before == 0) {
      return Optional.empty();
    }
    for (Told known : told) {
      if (known.returns() == before) {
        return Optional.of(known.say());
      }
    }
    DogSay say = say(before);
    told = Stream.concat(Stream.of(new Told(before, say)), told.stream()).limit(TOLD_MAX).toList();
    return Optional.of(say);
  }

  private DogSay say(int before) {
    List<Return> read = Returns.latest(returns.subList(0, before));
    return new DogSay(Retention.fitted(read, Retention.USUAL), read.size());
  }

  private int countBefore(Instant time) {
    int from = 0;
    int to = returns.size();
    while (from < to) {
      int middle = (from + to) >>> 1;
      if (returns.get(middle).time().isBefore(time)) {
        from = middle + 1;
      } else {
        to = middle;
      }
    }
    return from;
  }
}
