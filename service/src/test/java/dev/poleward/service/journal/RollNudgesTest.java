package dev.poleward.service.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;

class RollNudgesTest {

  private static final long SECOND = Duration.ofSeconds(1).toNanos();

  private final RollNudges nudges = new RollNudges(Duration.ofSeconds(60));

  @Test
  void nothingIsDueWithoutARecord() {
    nudges.hurry(0);

    assertThat(nudges.isDue(1_000 * SECOND)).isFalse();
  }

  @Test
  void aNudgeIsDueOnceARecordIsOldEnoughAndOnlyUntilItIsSeen() {
    nudges.seen(500_000, false, 0);
    assertThat(nudges.isDue(60 * SECOND)).isFalse();
    assertThat(nudges.isDue(61 * SECOND)).isTrue();

    nudges.seen(561_100, true, 61 * SECOND);

    assertThat(nudges.isDue(1_000 * SECOND)).isFalse();
  }

  @Test
  void aNudgeThatWasNotSeenIsAskedForAgain() {
    nudges.seen(500_000, false, 0);

    assertThat(nudges.isDue(61 * SECOND)).isTrue();
    assertThat(nudges.isDue(61 * SECOND + 1)).isFalse();
    assertThat(nudges.isDue(62 * SECOND + 1)).isTrue();
  }

  @Test
  void aNudgeThatCameTooEarlyByTheBrokersClockDoesNotCount() {
    nudges.seen(500_000, false, 0);

    nudges.seen(559_999, true, 59 * SECOND);

    assertThat(nudges.isDue(61 * SECOND)).isTrue();
  }

  @Test
  void aLaterRecordServesAnEarlierOneAndWaitsForItsOwnTurn() {
    nudges.seen(500_000, false, 0);
    nudges.seen(570_000, false, 70 * SECOND);

    assertThat(nudges.isDue(100 * SECOND)).isFalse();
    assertThat(nudges.isDue(131 * SECOND)).isTrue();
  }

  @Test
  void whatWasFoundAtTheStartIsHurried() {
    nudges.seen(500_000, false, 10 * SECOND);
    nudges.hurry(11 * SECOND);

    assertThat(nudges.isDue(11 * SECOND)).isTrue();
  }

  @Test
  void aSteadyStreamClosesItsSegmentsItselfUntilItEnds() {
    long now = 0;
    for (int at = 0; at < 500; at++) {
      now = at * SECOND * 4 / 10;
      nudges.seen(500_000 + at * 400L, false, now);
      assertThat(nudges.isDue(now)).isFalse();
    }

    assertThat(nudges.isDue(now + 61 * SECOND)).isTrue();
  }
}
