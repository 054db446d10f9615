package dev.poleward.service.projection;

import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Moment;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Keys of all rows. A key begins with the letter of its family and the club, so that everything
 * that is read together stands together and no read can stray into another club.
 */
final class RowKeys {

  private static final long SECONDS_A_DAY = 86_400;

  private RowKeys() {}

  /** Whether an id can be part of a key: a zero byte ends it there, so that it must hold none. */
  static boolean canHold(@Nullable EntityRef entity) {
    return entity == null || entity.id().indexOf('\0') < 0;
  }

  /** How far a partition has been applied. */
  static byte[] offset(int partition) {
    return new RowOutput().octet('o').whole(partition).done();
  }

  /** Which journal the rows were made from. */
  static byte[] journal() {
    return new RowOutput().octet('j').done();
  }

  /** The club's counters. */
  static byte[] club(String club) {
    return new RowOutput().octet('m').id(club).done();
  }

  /** What is known of an event id. */
  static byte[] event(String club, String id) {
    return events(club).lastId(id).done();
  }

  static RowOutput events(String club) {
    return new RowOutput().octet('e').id(club);
  }

  /** The event recorded at a position. */
  static byte[] feed(String club, long position) {
    return feedOf(club).number(position).done();
  }

  static RowOutput feedOf(String club) {
    return new RowOutput().octet('f').id(club);
  }

  /** Whether something has been announced. */
  static byte[] entity(String club, EntityRef entity) {
    return entities(club, entity.kind()).lastId(entity.id()).done();
  }

  static RowOutput entities(String club, EntityKind kind) {
    return new RowOutput().octet('n').id(club).octet(kind.ordinal());
  }

  /** A fact filed under an entity. */
  static byte[] about(String club, EntityRef entity, Moment moment) {
    return at(about(club, entity), moment);
  }

  static RowOutput about(String club, EntityRef entity) {
    return new RowOutput().octet('a').id(club).octet(entity.kind().ordinal()).id(entity.id());
  }

  /** A rep by the dog it was logged under. */
  static byte[] repOfDog(String club, String dog, Moment moment) {
    return at(repsOfDog(club, dog), moment);
  }

  static RowOutput repsOfDog(String club, String dog) {
    return new RowOutput().octet('r').id(club).id(dog);
  }

  /** That a dog has reps in a session, on a day of UTC. */
  static byte[] dayInSession(String club, String session, String dog, Instant time) {
    return daysInSession(club, session).id(dog).whole(day(time)).done();
  }

  static RowOutput daysInSession(String club, String session) {
    return new RowOutput().octet('s').id(club).id(session);
  }

  /** The day of UTC, counted from 1970. */
  static int day(Instant time) {
    return (int) Math.floorDiv(time.getEpochSecond(), SECONDS_A_DAY);
  }

  /** Where the reps of a dog on a day begin. */
  static byte[] repsOfDay(String club, String dog, int day) {
    return repsOfDog(club, dog).instant(Instant.ofEpochSecond(day * SECONDS_A_DAY)).done();
  }

  /** The opening of a session. */
  static byte[] opening(String club, Moment moment) {
    return at(openings(club), moment);
  }

  static RowOutput openings(String club) {
    return new RowOutput().octet('t').id(club);
  }

  /** A timing by its device. */
  static byte[] timingOf(String club, String device, Moment moment) {
    return at(timingsOf(club, device), moment);
  }

  static RowOutput timingsOf(String club, String device) {
    return new RowOutput().octet('k').id(club).id(device);
  }

  /** A correction, by the position at which it was recorded. */
  static byte[] correction(String club, long position) {
    return corrections(club).number(position).done();
  }

  static RowOutput corrections(String club) {
    return new RowOutput().octet('c').id(club);
  }

  /** An event that referred to something unknown when it was applied. */
  static byte[] unmet(String club, long position) {
    return allUnmet(club).number(position).done();
  }

  static RowOutput allUnmet(String club) {
    return new RowOutput().octet('u').id(club);
  }

  /** The n-th other content that came under an event's id. */
  static byte[] contradiction(String club, String event, long number) {
    return contradictions(club, event).number(number).done();
  }

  static RowOutput contradictions(String club, String event) {
    return new RowOutput().octet('x').id(club).id(event);
  }

  private static byte[] at(RowOutput prefix, Moment moment) {
    return prefix.instant(moment.time()).lastId(moment.id()).done();
  }

  /** The part of a key behind a prefix, as text. */
  static String rest(byte[] key, int prefixLength) {
    return new String(key, prefixLength, key.length - prefixLength, StandardCharsets.UTF_8);
  }

  static boolean startsWith(byte[] key, byte[] prefix) {
    return key.length >= prefix.length
        && Arrays.equals(key, 0, prefix.length, prefix, 0, prefix.length);
  }
}
