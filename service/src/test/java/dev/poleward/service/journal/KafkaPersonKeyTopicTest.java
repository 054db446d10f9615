package dev.poleward.service.journal;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.service.journal.PersonKeyTopic.WrappedKey;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class KafkaPersonKeyTopicTest implements PersonKeyTopicConformance {

  private static final PersonKeyTiming SHORT =
      new PersonKeyTiming(
          Duration.ofSeconds(1), Duration.ofMillis(200), Duration.ZERO, Duration.ofSeconds(5));

  private final long[] nothingKnown = new long[Journal.PARTITIONS];
  private final EmbeddedSettings settings = new EmbeddedSettings(0, SHORT);
  private Path folder;
  private EmbeddedBroker broker;

  @BeforeAll
  void start(@TempDir Path folder) {
    this.folder = folder;
    broker = EmbeddedBroker.start(folder, settings, nothingKnown);
  }

  @AfterAll
  void stop() {
    broker.close();
  }

  @Override
  public PersonKeyTopic topic() {
    return KafkaPersonKeyTopic.connect(broker.connection(), SHORT);
  }

  @Override
  public PersonKeyTopic sameTopicElsewhere() {
    return topic();
  }

  @Test
  @Timeout(60)
  void noFileHoldsADestroyedKeyOnceItsTimeIsOver() throws Exception {
    // Given
    var name = Entries.aClub() + "/p-ann/k1";
    try (var topic = topic()) {
      topic.follow(_ -> {}, LONG);
      topic.append(new WrappedKey(name, "this-key-is-to-go"), LONG);
      topic.append(new WrappedKey(Entries.aClub() + "/p-bea/k1", "this-key-is-to-stay"), LONG);
      assertThat(filesWith("this-key-is-to-go")).isNotEmpty();

      // When
      topic.append(new WrappedKey(name, null), LONG);
      Thread.sleep(topic.lastCopyGoneWithin());

      // Then
      assertThat(filesWith("this-key-is-to-go")).isEmpty();
      assertThat(filesWith("this-key-is-to-stay")).isNotEmpty();
    }
  }

  @Test
  @Timeout(60)
  void aStopInBetweenOnlyDelaysIt() throws Exception {
    // Given
    var name = Entries.aClub() + "/p-cleo/k1";
    try (var topic = topic()) {
      topic.follow(_ -> {}, LONG);
      topic.append(new WrappedKey(name, "this-key-saw-a-stop"), LONG);
      topic.append(new WrappedKey(name, null), LONG);
    }
    broker.close();
    assertThat(filesWith("this-key-saw-a-stop")).isNotEmpty();

    // When
    broker = EmbeddedBroker.start(folder, settings, nothingKnown);
    var received = new CopyOnWriteArrayList<WrappedKey>();
    try (var topic = topic()) {
      topic.follow(received::add, LONG);
      Thread.sleep(topic.lastCopyGoneWithin());
    }

    // Then
    assertThat(filesWith("this-key-saw-a-stop")).isEmpty();
    assertThat(received).contains(new WrappedKey(name, null));
  }

  private List<Path> filesWith(String text) throws IOException {
    var found = new ArrayList<Path>();
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            if (holds(file, text)) {
              found.add(file);
            }
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFileFailed(Path file, IOException e) {
            // The cleaner took it away between the listing and the look.
            return FileVisitResult.CONTINUE;
          }
        });
    return found;
  }

  private static boolean holds(Path file, String text) throws IOException {
    try {
      // Latin 1 keeps every byte, and the text is ASCII.
      return new String(Files.readAllBytes(file), ISO_8859_1).contains(text);
    } catch (NoSuchFileException goneMeanwhile) {
      return false;
    }
  }
}
