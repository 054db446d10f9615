package dev.poleward.service;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.record.Sealed;
import dev.poleward.service.access.MasterKey;
import dev.poleward.service.access.PersonKeys;
import dev.poleward.service.journal.MemoryPersonKeyTopic;
import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What follows from what the fold says, and when. */
class ProgressListenerTest {

  private static final String CLUB = "saltmarsh";
  private static final Duration WAIT = Duration.ofSeconds(10);
  private static final int LOOKS_MAX = 2_000;

  private final Set<String> forgotten = ConcurrentHashMap.newKeySet();
  private final AtomicBoolean caughtUp = new AtomicBoolean();
  private final SimpleMeterRegistry metrics = new SimpleMeterRegistry();

  @TempDir private Path folder;
  private Sealed ofInes;
  private Sealed ofRui;
  private PersonKeys keys;
  private ProgressListener listener;

  @BeforeEach
  void twoPeopleWhoseKeysWereThereAtTheStart() {
    MemoryPersonKeyTopic topic = new MemoryPersonKeyTopic();
    try (PersonKeys before = started(topic)) {
      ofInes = before.seal(CLUB, "ines", "e-1", bytes("{}")).orElseThrow();
      ofRui = before.seal(CLUB, "rui", "e-2", bytes("{}")).orElseThrow();
    }
    keys = started(topic.elsewhere());
    listener = new ProgressListener(keys, metrics, caughtUp::get);
  }

  @AfterEach
  void stop() {
    keys.close();
  }

  private PersonKeys started(MemoryPersonKeyTopic topic) {
    PersonKeys made =
        new PersonKeys(
            topic,
            MasterKey.open(folder.resolve("master.key"), MasterKey.WhenMissing.CREATE),
            (club, person) -> forgotten.contains(club + "/" + person),
            new Random(3)::nextBytes,
            WAIT);
    made.start(WAIT);
    return made;
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private boolean isKept(Sealed sealed, String event) {
    return keys.open(CLUB, event, sealed).isPresent();
  }

  /** Sweeps come one at a time, in order: once the second is done, the first would have been. */
  @Test
  void nobodysKeysAreSweptBeforeTheRowsHaveCaughtUp() throws InterruptedException {
    forgotten.addAll(Set.of(CLUB + "/ines", CLUB + "/rui"));
    listener.forgotten(CLUB, "ines");

    caughtUp.set(true);
    listener.forgotten(CLUB, "rui");
    awaitGone(ofRui, "e-2");

    assertThat(isKept(ofInes, "e-1")).isTrue();
    keys.sweepAll();
    awaitGone(ofInes, "e-1");
  }

  private void awaitGone(Sealed sealed, String event) throws InterruptedException {
    for (int look = 0; isKept(sealed, event); look++) {
      assertThat(look).as("looks for a key that should be gone").isLessThan(LOOKS_MAX);
      Thread.sleep(5);
    }
  }

  @Test
  void whatIsAppliedAndPassedOverIsCounted() {
    listener.applied(500);
    listener.applied(2);
    listener.passedOver();

    assertThat(metrics.get("poleward.projection.applied").counter().count()).isEqualTo(502);
    assertThat(metrics.get("poleward.projection.passed.over").counter().count()).isEqualTo(1);
  }

  @Test
  void aFailureIsNotForgotten() {
    assertThat(listener.hasFailed()).isFalse();
    listener.failed(new IllegalStateException("the disk is gone"));
    listener.applied(1);

    assertThat(listener.hasFailed()).isTrue();
  }
}
