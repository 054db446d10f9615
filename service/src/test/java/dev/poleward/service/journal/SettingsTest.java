package dev.poleward.service.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Every default, and every limit. */
class SettingsTest {

  @Test
  void theQueueTakesTwentyThousandEntriesOrThirtyTwoMebibytes() {
    assertThat(QueueLimits.DEFAULT).isEqualTo(new QueueLimits(20_000, 33_554_432));
    for (var entries : new int[] {999, 1_000_001}) {
      assertThatThrownBy(() -> new QueueLimits(entries, 32 << 20))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining(Integer.toString(entries));
    }
    for (var bytes : new int[] {(8 << 20) - 1, (1 << 30) + 1}) {
      assertThatThrownBy(() -> new QueueLimits(20_000, bytes))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining(Integer.toString(bytes));
    }
  }

  @Test
  void aDestroyedKeyIsGoneWithinMinutes() {
    assertThat(PersonKeyTiming.DEFAULT.lastCopyGoneWithin()).isEqualTo(Duration.ofMinutes(3));
    assertThat(ClusterSettings.DEFAULT.keyTiming().lastCopyGoneWithin())
        .isEqualTo(Duration.ofMinutes(5));
    assertThat(ClusterSettings.DEFAULT.replication()).isEmpty();
    var second = Duration.ofSeconds(1);
    assertThatThrownBy(() -> new PersonKeyTiming(Duration.ofHours(2), second, second, second))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("lag");
    assertThatThrownBy(() -> new PersonKeyTiming(second, Duration.ZERO, second, second))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("pause of the cleaner");
  }

  @Test
  void theBrokerTakesAnyFreePort() {
    assertThat(EmbeddedSettings.DEFAULT)
        .isEqualTo(new EmbeddedSettings(0, PersonKeyTiming.DEFAULT));
    assertThatThrownBy(() -> new EmbeddedSettings(65_536, PersonKeyTiming.DEFAULT))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aConnectionIsToSomewhereAndItsPropertiesAreAboutTheDoor() {
    assertThat(KafkaConnection.open("a:9092,b:9092"))
        .isEqualTo(new KafkaConnection("a:9092,b:9092", Map.of()));
    assertThatThrownBy(() -> KafkaConnection.open(" "))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new KafkaConnection("a:9092", Map.of("acks", "0")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("acks");
  }

  @Test
  void copiesInStepAreNotMoreThanThereAre() {
    assertThatThrownBy(() -> new Replication(2, 3)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Replication(0, 0)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void theQueueIsFullByEntriesOrByBytesAndHasRoomAgain() {
    var room = new QueueRoom(new QueueLimits(1_000, 8 << 20));

    assertThat(room.take(600, 100)).isTrue();
    assertThat(room.take(500, 100)).isFalse();
    assertThat(room.take(400, 8 << 20)).isFalse();
    assertThat(room.take(400, 100)).isTrue();
    room.giveBack(600, 100);
    assertThat(room.take(600, 100)).isTrue();
  }
}
