package dev.poleward.service.access;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.domain.record.Sealed;
import dev.poleward.service.access.MasterKey.WhenMissing;
import dev.poleward.service.journal.CannotStart;
import dev.poleward.service.journal.JournalException;
import dev.poleward.service.journal.PersonKeyTopic.WrappedKey;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PersonKeysTest {

  private static final Duration WAIT = Duration.ofSeconds(10);
  private static final byte[] INES = "{\"name\":\"Inês\"}".getBytes(UTF_8);

  private final KeyLog log = new KeyLog();
  private final ForgottenSet forgotten = new ForgottenSet();
  private final List<PersonKeys> opened = new ArrayList<>();
  private final SeededRandomness randomness = new SeededRandomness(3);

  @TempDir Path folder;
  private PersonKeys keys;

  @BeforeEach
  void start() {
    keys = started(log.node(), "master.key");
  }

  @AfterEach
  void stop() {
    opened.forEach(PersonKeys::close);
  }

  private PersonKeys started(KeyLog.Node node, String masterKey) {
    MasterKey master = MasterKey.open(folder.resolve(masterKey), WhenMissing.CREATE);
    PersonKeys started = new PersonKeys(node, master, forgotten, randomness, WAIT);
    opened.add(started);
    started.start(WAIT);
    return started;
  }

  private static Sealed sealedBy(PersonKeys keys, String person, String event) {
    return keys.seal("saltmarsh", person, event, INES).orElseThrow();
  }

  @Test
  void whatIsSealedComesBackAndCannotBeReadMeanwhile() {
    Sealed sealed = sealedBy(keys, "ines", "e-1");

    assertThat(sealed.person()).isEqualTo("ines");
    assertThat(sealed.box()).matches("[A-Za-z0-9_-]+");
    assertThat(new String(java.util.Base64.getUrlDecoder().decode(sealed.box()), UTF_8))
        .doesNotContain("In");
    assertThat(keys.open("saltmarsh", "e-1", sealed)).hasValue(INES);
    assertThat(log.records()).hasSize(1);
    assertThat(log.records().getFirst().name()).isEqualTo("saltmarsh/ines/" + sealed.keyId());
  }

  @Test
  void repeatsAreEqualBoxesThroughAnyNodeAndAfterAnyRestart() {
    Sealed first = sealedBy(keys, "ines", "e-1");

    assertThat(sealedBy(keys, "ines", "e-1")).isEqualTo(first);
    assertThat(sealedBy(started(log.node(), "master.key"), "ines", "e-1")).isEqualTo(first);
  }

  @Test
  void boxesTellNothingAcrossEventsPeopleAndClubs() {
    assertThat(
            List.of(
                sealedBy(keys, "ines", "e-1").box(),
                sealedBy(keys, "ines", "e-2").box(),
                sealedBy(keys, "rui", "e-1").box(),
                keys.seal("dunes", "ines", "e-1", INES).orElseThrow().box()))
        .doesNotHaveDuplicates();
  }

  @Test
  void aTamperedOrMovedBoxIsAFaultAndNotAForgetting() {
    Sealed sealed = sealedBy(keys, "ines", "e-1");
    char first = sealed.box().charAt(0);
    Sealed tampered =
        new Sealed("ines", sealed.keyId(), (first == 'A' ? 'B' : 'A') + sealed.box().substring(1));

    for (Sealed bad : List.of(tampered, new Sealed("ines", sealed.keyId(), "%%%"))) {
      assertThatThrownBy(() -> keys.open("saltmarsh", "e-1", bad))
          .isInstanceOf(BrokenSeal.class)
          .hasMessageContaining("e-1")
          .hasMessageNotContaining("In");
    }
    assertThatThrownBy(() -> keys.open("saltmarsh", "e-2", sealed)).isInstanceOf(BrokenSeal.class);
  }

  @Test
  void aForgottenPersonsMembersAreGoneAndNewOnesAreDropped() {
    Sealed name = sealedBy(keys, "ines", "e-1");
    Sealed other = sealedBy(keys, "rui", "e-2");

    forgotten.add("saltmarsh", "ines");
    assertThat(keys.forget("saltmarsh", "ines")).isEqualTo(KeyLog.LAST_COPY_GONE_WITHIN);

    assertThat(keys.open("saltmarsh", "e-1", name)).isEmpty();
    assertThat(keys.seal("saltmarsh", "ines", "e-3", INES)).isEmpty();
    assertThat(keys.open("saltmarsh", "e-2", other)).hasValue(INES);
    assertThat(keys.open("saltmarsh", "e-3", Sealed.dropped("ines"))).isEmpty();
    assertThat(log.records()).hasSize(3);

    log.compact();
    KeyLog.Node later = log.node();
    PersonKeys restarted = started(later, "master.key");
    assertThat(restarted.open("saltmarsh", "e-1", name)).isEmpty();
    assertThat(restarted.open("saltmarsh", "e-1", name)).isEmpty();
    assertThat(later.catchUps()).as("a key that is gone is looked for once").isEqualTo(1);
  }

  @Test
  void standInsGoWithTheLastPersonTheyStoodFor() {
    Sealed ofDog = sealedBy(keys, "dog:juniper", "e-1");
    Sealed ofOtherDog = sealedBy(keys, "dog:bracken", "e-2");
    Sealed ofRep = sealedBy(keys, "rep:r-1", "e-3");

    forgotten.add("saltmarsh", "ines");
    forgotten.add("saltmarsh", "dog:juniper");
    forgotten.add("saltmarsh", "rep:r-1");
    keys.forget("saltmarsh", "ines");

    assertThat(keys.open("saltmarsh", "e-1", ofDog)).isEmpty();
    assertThat(keys.open("saltmarsh", "e-2", ofOtherDog)).hasValue(INES);
    assertThat(keys.open("saltmarsh", "e-3", ofRep)).isEmpty();
  }

  @Test
  void oneNodeReadsWhatAnotherSealedBeforeItHasFollowed() {
    KeyLog.Node lagging = log.node();
    PersonKeys other = started(lagging, "master.key");
    lagging.stall();
    Sealed sealed = sealedBy(keys, "ines", "e-1");

    assertThat(other.open("saltmarsh", "e-1", sealed)).hasValue(INES);
  }

  @Test
  void nodesThatRaceForAPersonsFirstKeyAgreeOnOne() throws Exception {
    PersonKeys one = keys;
    PersonKeys two = started(log.node(), "master.key");
    for (int round = 0; round < 50; round++) {
      String person = "p-" + round;

      List<Sealed> sealed =
          atOnce(
              List.of(
                  () -> sealedBy(one, person, "e-1"),
                  () -> sealedBy(two, person, "e-1"),
                  () -> sealedBy(one, person, "e-1"),
                  () -> sealedBy(two, person, "e-1")));

      assertThat(sealed).as("round %d", round).containsOnly(sealed.getFirst());
    }
    assertThat(log.records().size()).isBetween(50, 100);
  }

  @Test
  void aLaggingNodeThatMakesASecondKeyUsesTheFirst() {
    KeyLog.Node lagging = log.node();
    PersonKeys other = started(lagging, "master.key");
    lagging.stall();
    Sealed first = sealedBy(keys, "ines", "e-1");

    assertThat(sealedBy(other, "ines", "e-1")).isEqualTo(first);
    // It need not have made one: it may have heard of the first just before it lagged.
    assertThat(log.records()).hasSizeBetween(1, 2);
  }

  @Test
  void aKeyThatAnotherNodeMadeForAForgottenPersonIsDestroyed() throws Exception {
    AtomicBoolean asked = new AtomicBoolean();
    Forgotten late = (_, _) -> asked.getAndSet(true);
    MasterKey master = MasterKey.open(folder.resolve("master.key"), WhenMissing.REFUSE);
    PersonKeys behind = new PersonKeys(log.node(), master, late, randomness, WAIT);
    opened.add(behind);
    behind.start(WAIT);
    forgotten.add("saltmarsh", "ines");

    behind.seal("saltmarsh", "ines", "e-1", INES);

    eventually(() -> log.records().size() > 1);
    log.compact();
    assertThat(log.records()).isEmpty();
  }

  @Test
  void aSweepDestroysWhatIsLeftOfAForgotten() throws Exception {
    Sealed name = sealedBy(keys, "ines", "e-1");
    Sealed note = sealedBy(keys, "dog:juniper", "e-2");
    Sealed other = sealedBy(keys, "rui", "e-3");
    keys.sweep("saltmarsh", "rui");
    forgotten.add("saltmarsh", "ines");
    forgotten.add("saltmarsh", "dog:juniper");

    keys.sweep("saltmarsh", "ines");

    eventually(() -> keys.open("saltmarsh", "e-1", name).isEmpty());
    eventually(() -> keys.open("saltmarsh", "e-2", note).isEmpty());
    assertThat(keys.open("saltmarsh", "e-3", other)).hasValue(INES);
  }

  @Test
  void aStartFinishesWhatADeathCutShort() throws Exception {
    Sealed name = sealedBy(keys, "ines", "e-1");
    forgotten.add("saltmarsh", "ines");
    PersonKeys restarted = started(log.node(), "master.key");

    restarted.sweepAll();

    eventually(() -> restarted.open("saltmarsh", "e-1", name).isEmpty());
  }

  @Test
  void aForgettingThatCannotBeWrittenIsNotClaimed() {
    sealedBy(keys, "ines", "e-1");
    forgotten.add("saltmarsh", "ines");
    log.failAfter(0);

    assertThatThrownBy(() -> keys.forget("saltmarsh", "ines")).isInstanceOf(JournalException.class);
  }

  @Test
  void nothingIsSealedUnderAKeyThatIsNotKept() {
    log.failAfter(0);
    assertThatThrownBy(() -> sealedBy(keys, "ines", "e-1")).isInstanceOf(JournalException.class);

    log.failAfter(1);
    assertThat(keys.open("saltmarsh", "e-1", sealedBy(keys, "ines", "e-1"))).hasValue(INES);
  }

  @Test
  void anotherMasterKeyRefusesToStart() {
    sealedBy(keys, "ines", "e-1");

    assertThatThrownBy(() -> started(log.node(), "another.key"))
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining("another.key")
        .hasMessageContaining("is not the one");
  }

  @Test
  void recordsOfSomebodyElseArePassedOver() {
    KeyLog.Node stranger = log.node();
    stranger.follow(_ -> {}, WAIT);
    stranger.append(new WrappedKey("no name", "x"), WAIT);
    stranger.append(new WrappedKey("saltmarsh/ines/big", "x".repeat(100_000)), WAIT);
    stranger.append(new WrappedKey("saltmarsh//k", null), WAIT);
    stranger.append(new WrappedKey("saltmarsh/nobody/k", null), WAIT);
    stranger.close();
    PersonKeys restarted = started(log.node(), "master.key");

    assertThat(restarted.open("saltmarsh", "e-1", sealedBy(restarted, "ines", "e-1")))
        .hasValue(INES);
  }

  @Test
  void refusesMoreThanAnyEventHas() {
    assertThatThrownBy(() -> keys.seal("saltmarsh", "ines", "e-1", new byte[20_000]))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static <T> List<T> atOnce(List<Callable<T>> tasks) throws Exception {
    CyclicBarrier together = new CyclicBarrier(tasks.size());
    try (var threads = Executors.newVirtualThreadPerTaskExecutor()) {
      List<Future<T>> running = new ArrayList<>();
      for (Callable<T> task : tasks) {
        running.add(
            threads.submit(
                () -> {
                  together.await();
                  return task.call();
                }));
      }
      List<T> results = new ArrayList<>();
      for (Future<T> each : running) {
        results.add(each.get());
      }
      return results;
    }
  }

  static void eventually(Callable<Boolean> came) throws Exception {
    for (int tries = 0; tries < 1_000; tries++) {
      if (came.call()) {
        return;
      }
      Thread.sleep(10);
    }
    throw new AssertionError("it did not come about");
  }
}
