package dev.poleward.service.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.service.journal.PersonKeyTopic.WrappedKey;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * What every topic of wrapped keys promises. Run by a test class for each; the topic may hold keys
 * of other tests already.
 */
@Timeout(60)
interface PersonKeyTopicConformance {

  Duration LONG = Duration.ofSeconds(20);

  /** The topic under test, not followed yet; the suite closes it. */
  PersonKeyTopic topic();

  /** The same topic as another node sees it, not followed yet; the suite closes it. */
  PersonKeyTopic sameTopicElsewhere();

  @Test
  default void whatIsAppendedIsReceivedBeforeItIsDone() {
    // Given
    var received = new CopyOnWriteArrayList<WrappedKey>();
    var key = new WrappedKey(aName(), "d3JhcHBlZA");
    try (var topic = topic()) {
      topic.follow(received::add, LONG);

      // When
      topic.append(key, LONG);

      // Then
      assertThat(received).endsWith(key);
    }
  }

  @Test
  default void whoComesLaterReceivesAllInTheSameOrder() {
    // Given
    var first = new CopyOnWriteArrayList<WrappedKey>();
    var later = new CopyOnWriteArrayList<WrappedKey>();
    try (var topic = topic();
        var elsewhere = sameTopicElsewhere()) {
      topic.follow(first::add, LONG);
      var name = aName();
      topic.append(new WrappedKey(name, "one"), LONG);
      topic.append(new WrappedKey(aName(), "two"), LONG);
      topic.append(new WrappedKey(name, null), LONG);

      // When
      elsewhere.follow(later::add, LONG);

      // Then
      assertThat(later).isEqualTo(first).hasSizeGreaterThanOrEqualTo(3);
      assertThat(later.getLast()).isEqualTo(new WrappedKey(name, null));
    }
  }

  @Test
  default void catchingUpSeesWhatAnotherNodeAppended() {
    // Given
    var received = new CopyOnWriteArrayList<WrappedKey>();
    try (var topic = topic();
        var elsewhere = sameTopicElsewhere()) {
      topic.follow(_ -> {}, LONG);
      elsewhere.follow(received::add, LONG);
      var keys = IntStream.range(0, 50).mapToObj(at -> new WrappedKey(aName(), "k" + at)).toList();
      keys.forEach(key -> topic.append(key, LONG));

      // When
      elsewhere.catchUp(LONG);

      // Then
      assertThat(received).containsAll(keys);
    }
  }

  @Test
  default void nothingHappensBeforeItIsFollowedAndItIsFollowedOnce() {
    try (var topic = topic()) {
      assertThatThrownBy(() -> topic.append(new WrappedKey(aName(), "x"), LONG))
          .isInstanceOf(IllegalStateException.class);
      assertThatThrownBy(() -> topic.catchUp(LONG)).isInstanceOf(IllegalStateException.class);

      topic.follow(_ -> {}, LONG);

      assertThatThrownBy(() -> topic.follow(_ -> {}, LONG))
          .isInstanceOf(IllegalStateException.class);
    }
  }

  @Test
  default void aNameIsAClubsAPersonsAndAKeys() {
    try (var topic = topic()) {
      topic.follow(_ -> {}, LONG);

      for (var slip : List.of("-/roll", "club", "club//k1", "/person/k1", "club/person/")) {
        assertThatThrownBy(() -> topic.append(new WrappedKey(slip, "x"), LONG))
            .as(slip)
            .isInstanceOf(IllegalArgumentException.class);
      }
    }
  }

  @Test
  default void theLastCopyIsGoneInTime() {
    try (var topic = topic()) {
      assertThat(topic.lastCopyGoneWithin()).isPositive();
    }
  }

  private static String aName() {
    return Entries.aClub() + "/p-ann/k1";
  }
}
