package dev.poleward.service.projection;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.service.projection.Reading.FeedEvent;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When an event counts as recorded: never before an earlier one, unless an import says so. */
class RecordingTimesTest {

  @TempDir private Path folder;
  private FoldedRows rows;

  @BeforeEach
  void open() {
    rows = new FoldedRows(folder);
  }

  @AfterEach
  void close() {
    rows.close();
  }

  private void applyOneByOne(Sent... sent) {
    Stream.of(sent).forEach(each -> rows.apply(List.of(each.entry())));
  }

  private void applyAtOnce(Sent... sent) {
    rows.apply(Stream.of(sent).map(Sent::entry).toList());
  }

  private List<String> recorded(String club) {
    try (Reading reading = rows.open(club)) {
      return reading.feed(0, 100).stream()
          .map(FeedEvent::recorded)
          .map(Instant::toString)
          .map(time -> time.substring("2026-05-05T".length()))
          .toList();
    }
  }

  private static Sent event(int number) {
    return Sent.event("e-" + number);
  }

  @Test
  void aNodeWhoseClockIsBehindDoesNotTurnTimeBack() {
    applyAtOnce(
        event(1).recordedAt("10:00:00"),
        event(2).recordedAt("09:59:58"),
        event(3).recordedAt("10:00:01"),
        event(4).recordedAt("09:59:59"));

    assertThat(recorded("saltmarsh"))
        .containsExactly("10:00:00Z", "10:00:00Z", "10:00:01Z", "10:00:01Z");
  }

  @Test
  void neitherDoesItFromOneBatchToTheNextOrAfterAStop() {
    applyOneByOne(event(1).recordedAt("10:00:00"), event(2).recordedAt("09:59:58"));
    rows.close();
    rows = new FoldedRows(folder);
    applyOneByOne(event(3).recordedAt("09:00:00"));

    assertThat(recorded("saltmarsh")).containsExactly("10:00:00Z", "10:00:00Z", "10:00:00Z");
  }

  @Test
  void clubsDoNotShareATime() {
    applyAtOnce(event(1).recordedAt("10:00:00"), event(1).of("another").recordedAt("09:00:00"));

    assertThat(recorded("another")).containsExactly("09:00:00Z");
  }

  @Test
  void whatAnImportSaysIsKept() {
    applyAtOnce(
        event(1).recordedAt("10:00:00"),
        event(2).recordedGiven("07:00:00"),
        event(3).recordedAt("09:00:00"),
        event(4).recordedGiven("11:00:00"),
        event(5).recordedAt("10:30:00"));

    assertThat(recorded("saltmarsh"))
        .containsExactly("10:00:00Z", "07:00:00Z", "10:00:00Z", "11:00:00Z", "11:00:00Z");
  }

  @Test
  void aRepeatChangesNoRecordingTime() {
    applyAtOnce(
        event(1).recordedAt("10:00:00"),
        event(1).recordedAt("12:00:00"),
        event(1).recordedGiven("06:00:00"),
        event(2).recordedAt("10:00:01"));

    assertThat(recorded("saltmarsh")).containsExactly("10:00:00Z", "10:00:01Z");
  }
}
