package dev.poleward.service.access;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import com.google.crypto.tink.DeterministicAead;
import dev.poleward.domain.record.Sealed;
import dev.poleward.service.journal.CannotStart;
import dev.poleward.service.journal.JournalException;
import dev.poleward.service.journal.PersonKeyTopic;
import dev.poleward.service.journal.PersonKeyTopic.WrappedKey;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * One key for each person of a club, made when it is first needed, and destroyed when the person is
 * forgotten. Safe for use by many threads, once started.
 *
 * <p>Two nodes may make a key for one person at once. Both stand in the topic, and everybody uses
 * the first one there; so equal members come out as equal boxes, through any node.
 */
public final class PersonKeys implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(PersonKeys.class);

  private static final int PLAINTEXT_BYTES_MAX = 16 * 1024;
  private static final int WRAPPED_CHARACTERS_MAX = 1024;
  private static final int KEY_ID_BYTES = 16;
  private static final int ATTEMPTS_MAX = 3;
  private static final int CIPHERS_MAX = 10_000;
  private static final int GONE_MAX = 50_000;
  private static final int TRIED_AT_START_MAX = 1_000;
  private static final int LOCKS = 64;
  private static final Duration SWEEP_AGAIN_AFTER = Duration.ofSeconds(10);

  private final PersonKeyTopic topic;
  private final MasterKey master;
  private final Forgotten forgotten;
  private final Randomness randomness;
  private final Duration waitMax;

  private final LiveKeys live = new LiveKeys();
  private final Cache<PersonKeyName, DeterministicAead> ciphers =
      Caffeine.newBuilder().maximumSize(CIPHERS_MAX).build();

  /** Keys that were there once, or never will be: nobody need look for them again. */
  private final Cache<PersonKeyName, Boolean> gone =
      Caffeine.newBuilder().maximumSize(GONE_MAX).build();

  /** So that this node makes one key a person and not one a thread. */
  private final List<ReentrantLock> making =
      IntStream.range(0, LOCKS).mapToObj(_ -> new ReentrantLock()).toList();

  private final Sweeper sweeper;
  private volatile boolean started;

  /**
   * Keys as the topic has them.
   *
   * @param waitMax longest wait for the topic, each time
   */
  public PersonKeys(
      PersonKeyTopic topic,
      MasterKey master,
      Forgotten forgotten,
      Randomness randomness,
      Duration waitMax) {
    this.topic = topic;
    this.master = master;
    this.forgotten = forgotten;
    this.randomness = randomness;
    this.waitMax = waitMax;
    this.sweeper = new Sweeper(this::sweepNow, SWEEP_AGAIN_AFTER);
  }

  /**
   * Reads all keys and begins to follow the topic. To be called once, before anything else.
   *
   * @throws CannotStart when the master key is not the one that wrapped these keys
   * @throws JournalException when the topic was not read in time
   */
  public void start(Duration wait) {
    topic.follow(this::take, wait);
    live.people(_ -> true).stream()
        .flatMap(person -> live.of(person).stream())
        .limit(TRIED_AT_START_MAX)
        .forEach(this::tryUnwrapping);
    started = true;
  }

  private void tryUnwrapping(PersonKeyName name) {
    live.wrapped(name)
        .ifPresent(
            wrapped -> {
              try {
                master.unwrap(name, wrapped);
              } catch (GeneralSecurityException _) {
                throw master.wrongKey();
              }
            });
  }

  private void take(WrappedKey key) {
    Optional<PersonKeyName> parsed = PersonKeyName.parse(key.name());
    if (parsed.isEmpty()
        || (key.wrapped() != null && key.wrapped().length() > WRAPPED_CHARACTERS_MAX)) {
      LOG.warn("A record among people's keys is none of ours; passed over");
      return;
    }
    PersonKeyName name = parsed.get();
    live.take(name, key);
    if (key.wrapped() == null) {
      gone.put(name, true);
      ciphers.invalidate(name);
    } else if (started) {
      // Another node may not know yet that this person is forgotten.
      sweeper.suspect(name.person());
    }
  }

  /**
   * Seals personal members of an event. Equal members of one event come out as equal boxes.
   *
   * @param person a handler's id, or whoever else {@link PersonalFields} names
   * @return empty when the person is forgotten, and what was to be sealed is to be dropped
   * @throws JournalException when the person's key cannot be had
   */
  public Optional<Sealed> seal(String club, String person, String eventId, byte[] plaintext) {
    if (plaintext.length > PLAINTEXT_BYTES_MAX) {
      throw new IllegalArgumentException("more personal members than any event has");
    }
    Person owner = new Person(club, person);
    for (int attempt = 0; attempt < ATTEMPTS_MAX; attempt++) {
      Optional<PersonKeyName> name = live.first(owner);
      if (name.isEmpty()) {
        if (!make(owner)) {
          return Optional.empty();
        }
        continue;
      }
      // Without a cipher the key was destroyed this very moment: look again.
      DeterministicAead cipher = cipher(name.get());
      if (cipher != null) {
        return Optional.of(sealed(name.get(), cipher, eventId, plaintext));
      }
    }
    throw new JournalException("a person's keys are destroyed as fast as they are made");
  }

  private static Sealed sealed(
      PersonKeyName name, DeterministicAead cipher, String eventId, byte[] plaintext) {
    try {
      byte[] box = cipher.encryptDeterministically(plaintext, bound(name.person().club(), eventId));
      return new Sealed(name.person().id(), name.keyId(), KeyCiphers.text(box));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("members cannot be sealed", e);
    }
  }

  /** Makes a key unless there is one; returns false when the person is forgotten. */
  private boolean make(Person person) {
    ReentrantLock lock = making.get(Math.floorMod(person.hashCode(), LOCKS));
    lock.lock();
    try {
      if (live.first(person).isPresent()) {
        return true;
      }
      if (forgotten.isForgotten(person.club(), person.id())) {
        return false;
      }
      PersonKeyName name =
          new PersonKeyName(person, LettersAndDigits.random(randomness, KEY_ID_BYTES));
      topic.append(new WrappedKey(name.written(), master.newKey(name)), waitMax);
      return true;
    } finally {
      lock.unlock();
    }
  }

  /**
   * Opens what was sealed.
   *
   * @return empty when the key is destroyed, or nothing was kept
   * @throws BrokenSeal when it is not what was sealed for that event of that club
   * @throws JournalException when it cannot be found out in time whether there is such a key
   */
  public Optional<byte[]> open(String club, String eventId, Sealed sealed) {
    if (sealed.isDropped()) {
      return Optional.empty();
    }
    PersonKeyName name = new PersonKeyName(new Person(club, sealed.person()), sealed.keyId());
    DeterministicAead cipher = cipher(name);
    if (cipher == null && gone.getIfPresent(name) == null) {
      // A key is in the topic before anything is sealed under it, but we may not have read so far.
      topic.catchUp(waitMax);
      cipher = cipher(name);
      if (cipher == null) {
        gone.put(name, true);
      }
    }
    return cipher == null
        ? Optional.empty()
        : Optional.of(opened(cipher, club, eventId, sealed.box()));
  }

  private static byte[] opened(DeterministicAead cipher, String club, String eventId, String box) {
    try {
      return cipher.decryptDeterministically(KeyCiphers.bytes(box), bound(club, eventId));
    } catch (GeneralSecurityException e) {
      throw new BrokenSeal("The personal members of event " + eventId + " were changed", e);
    }
  }

  /** What a box is bound to: a box moved to another event opens nothing. Ids hold no slash. */
  private static byte[] bound(String club, String eventId) {
    return (club + '/' + eventId).getBytes(StandardCharsets.UTF_8);
  }

  /** The cipher of a key, or null when there is no such key. */
  private @Nullable DeterministicAead cipher(PersonKeyName name) {
    return ciphers.get(name, this::unwrapped);
  }

  private @Nullable DeterministicAead unwrapped(PersonKeyName name) {
    Optional<String> wrapped = live.wrapped(name);
    if (wrapped.isEmpty()) {
      return null;
    }
    try {
      return master.unwrap(name, wrapped.get());
    } catch (GeneralSecurityException e) {
      throw new BrokenSeal("A person's key is not wrapped under this master key", e);
    }
  }

  /**
   * Destroys all keys of a person, and those of dogs and reps for whom nobody else is left. To be
   * called once the forgetting is recorded and applied here, which keeps new keys from being made.
   *
   * @return how long until the last copy of the keys is gone
   * @throws JournalException when that could not be done in time; what is left is done by {@link
   *     #sweep}
   */
  public Duration forget(String club, String person) {
    topic.catchUp(waitMax);
    destroy(new Person(club, person));
    sweepNow(new Sweeper.Sweep.OfForgotten(new Person(club, person)));
    return topic.lastCopyGoneWithin();
  }

  private void destroy(Person person) {
    for (PersonKeyName name : live.of(person)) {
      topic.append(new WrappedKey(name.written(), null), waitMax);
    }
  }

  /**
   * Sees to it, a little later, that no key is left of a person who is forgotten. To be called by
   * whoever applies a forgetting, on any thread, as often as it is applied; does not wait.
   */
  public void sweep(String club, String person) {
    sweeper.request(new Sweeper.Sweep.OfForgotten(new Person(club, person)));
  }

  /**
   * Sees to it, a little later, that no key is left of anybody who is forgotten. To be called when
   * this node has caught up after a start: the one before may have died between a forgetting and
   * the end of the keys.
   */
  public void sweepAll() {
    sweeper.request(new Sweeper.Sweep.OfEverybody());
  }

  private void sweepNow(Sweeper.Sweep sweep) {
    Stream<Person> suspects =
        switch (sweep) {
          case Sweeper.Sweep.OfEverybody _ -> live.people(_ -> true).stream();
          case Sweeper.Sweep.OfSuspect(Person person) -> Stream.of(person);
          case Sweeper.Sweep.OfForgotten(Person person) ->
              Stream.concat(
                  Stream.of(person), live.people(other -> depends(other, person)).stream());
        };
    suspects
        .filter(suspect -> live.first(suspect).isPresent())
        .filter(suspect -> forgotten.isForgotten(suspect.club(), suspect.id()))
        .forEach(this::destroy);
  }

  /** Whether keys of {@code other}, a dog or a rep, may have been kept for {@code person}. */
  private static boolean depends(Person other, Person person) {
    return other.club().equals(person.club()) && PersonalMembers.isStandIn(other.id());
  }

  /** Ends the sweeping, and follows the topic no more. */
  @Override
  public void close() {
    sweeper.close();
    topic.close();
  }
}
