package dev.poleward.service.http;

import dev.poleward.domain.record.DogIdentity;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.service.access.Authentication.Identity;
import dev.poleward.service.access.ClubIdentity;
import dev.poleward.service.access.HostIdentity;
import dev.poleward.service.access.Permission;
import dev.poleward.service.access.PersonalFields;
import dev.poleward.service.access.Scope;
import dev.poleward.service.codec.Ids;
import dev.poleward.service.contract.Fault;
import dev.poleward.service.projection.ClubReader;
import dev.poleward.service.projection.Reading;
import dev.poleward.service.projection.Remembered;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Semaphore;
import java.util.function.BiFunction;
import java.util.function.Supplier;

/**
 * The frame around every read of a club: catch up, let in, wait for an event, open a reading,
 * answer 304 where nothing changed. Safe for use by many threads.
 */
final class ClubReads {

  /** Longest that a read waits to catch up with the journal. */
  static final Duration CATCH_UP_MAX = Duration.ofSeconds(10);

  /** Longest that a read waits for the event that it names. */
  static final Duration WAIT_FOR_MAX = Duration.ofSeconds(10);

  private static final String WAIT_FOR = "Poleward-Wait-For";
  private static final Duration LOOK_AGAIN_MIN = Duration.ofMillis(2);
  private static final Duration LOOK_AGAIN_MAX = Duration.ofMillis(64);

  /** Reads that wait for an event at a time; one more is answered as if its wait were over. */
  private static final int WAITERS_MAX = 256;

  private static final long ANSWER_BYTES_MAX = 8L << 20;
  private static final long REGISTERED_BYTES_MAX = 1L << 20;

  /**
   * A question as answers are remembered by it. Whoever may see everything shares answers; whoever
   * may not, sees those that were made for the same key.
   *
   * @param key empty for those who may see everything
   */
  private record Question(String form, String asked, String key) {

    static Question of(Call call, Reader reader) {
      return new Question(call.form(), call.question(), narrowedTo(reader));
    }

    private static String narrowedTo(Reader reader) {
      return switch (reader.identity()) {
        case HostIdentity _ -> "";
        case ClubIdentity club -> reader.mayTouchEveryDog() ? "" : club.key();
      };
    }
  }

  private final Gate gate;
  private final ClubReader clubs;
  private final PersonalFields personal;
  private final Semaphore waiters = new Semaphore(WAITERS_MAX);
  private final Remembered<String, Boolean> registered =
      new Remembered<>(REGISTERED_BYTES_MAX, (_, _) -> 0);
  private final Remembered<Question, Answer> answers =
      new Remembered<>(
          ANSWER_BYTES_MAX,
          (question, answer) -> answer.body().length + (long) question.asked().length());

  ClubReads(Gate gate, ClubReader clubs, PersonalFields personal) {
    this.personal = personal;
    this.gate = gate;
    this.clubs = clubs;
  }

  /** Who reads what. */
  record Reader(Identity identity, String club, Reading reading, PersonalView personal) {

    /** Whether this reader may see that dog, under whichever of its registrations. */
    boolean maySee(DogIdentity dogs, String dog) {
      return mayTouchEveryDog()
          || dogs.group(dog).stream().anyMatch(each -> Permission.mayTouch(identity, each));
    }

    /** Whether this reader may see every dog. */
    boolean mayTouchEveryDog() {
      return Permission.mayTouchEveryDog(identity);
    }
  }

  /** How the answer is marked. */
  sealed interface Marking {

    /** By the club's position: the answer follows from the club's recorded events. */
    Marking BY_POSITION = new ByPosition((_, _) -> "");

    /** By the answer itself: it depends on more than that. */
    Marking BY_CONTENT = new ByContent();

    /**
     * By the club's position and by what else the answer follows from, such as the day.
     *
     * @param besides says what it is, before the answer is made and whatever the parameters
     */
    record ByPosition(BiFunction<Call, Reader, String> besides) implements Marking {}

    /** The same, and the answer is remembered. */
    record Remembered(BiFunction<Call, Reader, String> besides) implements Marking {}

    /** By the answer itself. */
    record ByContent() implements Marking {}

    /** Not at all: the question came in a body, and tags go with addresses. */
    record Unmarked() implements Marking {}
  }

  /** A read for those with {@code records:read}. */
  Answer read(Call call, BiFunction<Call, Reader, Answer> route) {
    return read(call, Set.of(Scope.RECORDS_READ), Marking.BY_POSITION, route);
  }

  /** The same, of what follows from the club's events and something {@code besides}. */
  Answer read(
      Call call, BiFunction<Call, Reader, String> besides, BiFunction<Call, Reader, Answer> route) {
    return read(call, Set.of(Scope.RECORDS_READ), new Marking.ByPosition(besides), route);
  }

  /**
   * The same, of what costs something to make: an answer is remembered until it could be another.
   * Not for answers that hold personal members, which a forgetting takes away at once.
   */
  Answer remembered(
      Call call, BiFunction<Call, Reader, String> besides, BiFunction<Call, Reader, Answer> route) {
    return read(call, Set.of(Scope.RECORDS_READ), new Marking.Remembered(besides), route);
  }

  /** A read of what speaks of the whole club: not for keys that are narrowed to some dogs. */
  Answer ofWholeClub(Call call, BiFunction<Call, Reader, Answer> route) {
    return read(call, ofWholeClub(route));
  }

  /** Keeps keys out that are narrowed to some dogs. */
  static BiFunction<Call, Reader, Answer> ofWholeClub(BiFunction<Call, Reader, Answer> route) {
    return (call, reader) ->
        reader.mayTouchEveryDog()
            ? route.apply(call, reader)
            : call.refused(ProblemKind.FORBIDDEN, "The key is narrowed to some dogs.");
  }

  /** A read whose question came in a body. */
  Answer unmarked(Call call, BiFunction<Call, Reader, Answer> route) {
    return read(call, Set.of(Scope.RECORDS_READ), new Marking.Unmarked(), route);
  }

  /** A read for those with one of these scopes. */
  Answer read(
      Call call, Set<Scope> anyOf, Marking marking, BiFunction<Call, Reader, Answer> route) {
    String club = call.inPath("club");
    Optional<Answer> notReady = gate.notReady(call);
    if (notReady.isPresent()) {
      return notReady.get();
    }
    if (!clubs.catchUp(club, CATCH_UP_MAX)) {
      return call.refused(ProblemKind.NOT_IN_TIME, "The node could not catch up in time.");
    }
    return gate.inClub(
        call,
        club,
        anyOf,
        identity -> {
          String awaited = call.header(WAIT_FOR).orElse("");
          if (!awaited.isEmpty() && !Ids.isId(awaited)) {
            return call.refused(
                Problem.inParameters(List.of(new Fault(WAIT_FOR, "must be the id of an event"))));
          }
          if (!applied(club, awaited)) {
            return call.refused(
                ProblemKind.NOT_IN_TIME, "The event in " + WAIT_FOR + " was not applied in time.");
          }
          try (Reading reading = clubs.open(club)) {
            if (!registered.of(reading, "", () -> isRegistered(reading))) {
              return call.refused(ProblemKind.NOT_FOUND, "There is no such club.");
            }
            return marked(call, reader(identity, club, reading), marking, route);
          }
        });
  }

  /** Whether a club of that id is registered, through whichever node. */
  static boolean isRegistered(ClubReader clubs, String club) {
    return isRegisteredHere(clubs, club)
        || (clubs.catchUp(club, CATCH_UP_MAX) && isRegisteredHere(clubs, club));
  }

  private static boolean isRegisteredHere(ClubReader clubs, String club) {
    try (Reading reading = clubs.open(club)) {
      return isRegistered(reading);
    }
  }

  private static boolean isRegistered(Reading reading) {
    return !reading.facts().about(EntityRef.CLUB_ITSELF).isEmpty();
  }

  private Reader reader(Identity identity, String club, Reading reading) {
    return new Reader(identity, club, reading, new PersonalView(personal, club, reading.facts()));
  }

  private Answer marked(
      Call call, Reader reader, Marking marking, BiFunction<Call, Reader, Answer> route) {
    return switch (marking) {
      case Marking.ByPosition(BiFunction<Call, Reader, String> besides) ->
          byPosition(call, reader, besides.apply(call, reader), () -> route.apply(call, reader));
      case Marking.Remembered(BiFunction<Call, Reader, String> besides) -> {
        String known = besides.apply(call, reader);
        yield byPosition(call, reader, known, () -> answered(call, reader, known, route));
      }
      case Marking.ByContent _ -> {
        Answer answer = route.apply(call, reader);
        String tag = EntityTag.ofContent(answer);
        yield answer.status() == 200 && EntityTag.matches(call, tag)
            ? EntityTag.on(Answer.notModified(), tag)
            : EntityTag.unlessAny(call, EntityTag.on(answer, tag));
      }
      case Marking.Unmarked _ -> route.apply(call, reader);
    };
  }

  private static Answer byPosition(
      Call call, Reader reader, String besides, Supplier<Answer> route) {
    String tag =
        EntityTag.ofQuestion(call, reader.identity(), reader.reading().position(), besides);
    return EntityTag.matches(call, tag)
        ? EntityTag.on(Answer.notModified(), tag)
        : EntityTag.unlessAny(call, EntityTag.on(route.get(), tag));
  }

  /** What is remembered, or else made; refusals are made each time. */
  private Answer answered(
      Call call, Reader reader, String besides, BiFunction<Call, Reader, Answer> route) {
    Question question = Question.of(call, reader);
    Optional<Answer> known = answers.known(reader.reading(), question, besides);
    if (known.isPresent()) {
      return known.get();
    }
    Answer answer = route.apply(call, reader);
    return answer.status() == 200
        ? answers.kept(reader.reading(), question, besides, answer)
        : answer;
  }

  private boolean applied(String club, String event) {
    if (event.isEmpty()) {
      return true;
    }
    if (isApplied(club, event)) {
      return true;
    }
    if (!waiters.tryAcquire()) {
      return false;
    }
    try {
      return awaitApplied(club, event);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    } finally {
      waiters.release();
    }
  }

  /** Looks again and again, less often the longer it takes. */
  private boolean awaitApplied(String club, String event) throws InterruptedException {
    long deadline = System.nanoTime() + WAIT_FOR_MAX.toNanos();
    Duration pause = LOOK_AGAIN_MIN;
    while (System.nanoTime() < deadline) {
      Thread.sleep(pause);
      if (isApplied(club, event)) {
        return true;
      }
      pause = pause.compareTo(LOOK_AGAIN_MAX) < 0 ? pause.multipliedBy(2) : LOOK_AGAIN_MAX;
    }
    return false;
  }

  private boolean isApplied(String club, String event) {
    try (Reading reading = clubs.open(club)) {
      return reading.facts().event(event).isPresent();
    }
  }
}
