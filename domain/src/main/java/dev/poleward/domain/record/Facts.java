package dev.poleward.domain.record;

import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * What is recorded of one club, as of one moment of reading: lists come in no particular order and
 * hold every recorded event that fits, withdrawn and amended ones included.
 */
public interface Facts {

  /** Reps that were logged under this dog's id. */
  List<Fact<RepLogged>> repsOf(String dog);

  /** Reps that were logged under this session's id. */
  List<Fact<RepLogged>> repsIn(String session);

  /** Every logging under this rep id: one, as a rule. */
  List<Fact<RepLogged>> repsLoggedAs(String rep);

  /** Timings of a device that happened from one instant on to before another. */
  List<Fact<TimingRecorded>> timingsOf(String device, Instant from, Instant until);

  /** Everything that {@link Filing} files under this entity. */
  List<Fact<?>> about(EntityRef entity);

  /** Ids of that kind that were ever announced, in ascending order, those above {@code after}. */
  List<String> announced(EntityKind kind, String after, int limit);

  /**
   * Openings of sessions, ascending by (time, id), those after {@code after}.
   *
   * @param after null to begin with the first
   */
  List<Fact<SessionOpened>> sessionsOpened(@Nullable Moment after, int limit);

  /** One recorded event. */
  Optional<Fact<?>> event(String id);

  /** Withdrawals, amendments, merges, pairings and double loggings of the whole club. */
  Corrections corrections();

  /**
   * Gives every event that ever referred to something unknown, every timing that names a rep, and
   * perhaps others.
   */
  void everUnmet(Consumer<Fact<?>> receiver);

  /** Gives every recorded event. */
  void all(Consumer<Fact<?>> receiver);
}
