package dev.poleward.service;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.service.journal.CannotStart;
import org.junit.jupiter.api.Test;

/** What no start may pass over. Whole starts are in {@link RestartTest}. */
class CompositionTest {

  @Test
  void aJournalThatLacksWhatWasAcknowledgedIsRefused() {
    long[] applied = {3, 0, 7};

    assertThatThrownBy(() -> Composition.refuseShorterJournal(new long[] {3, 5, 6}, applied))
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining("Partition 2 of the journal ends at 6")
        .hasMessageContaining("7 records were acknowledged");
    assertThatThrownBy(() -> Composition.refuseShorterJournal(new long[3], applied))
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining("Partition 0 of the journal ends at 0");
  }

  @Test
  void aJournalThatHoldsAllOrMoreIsTaken() {
    long[] applied = {3, 0, 7};

    for (long[] ends : new long[][] {{3, 0, 7}, {4, 9, 7}}) {
      assertThatCode(() -> Composition.refuseShorterJournal(ends, applied))
          .doesNotThrowAnyException();
    }
  }
}
