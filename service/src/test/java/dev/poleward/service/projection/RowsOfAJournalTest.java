package dev.poleward.service.projection;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows belong to the journal that they were made from, and to no other, for good. */
class RowsOfAJournalTest {

  @TempDir private Path folder;

  @Test
  void newRowsBelongToWhicheverJournalComesFirst() {
    try (RowStore rows = RowStore.open(folder, RowSettings.DEFAULT)) {
      assertThat(rows.belongTo("first")).isTrue();
      assertThat(rows.belongTo("first")).isTrue();
      assertThat(rows.belongTo("second")).isFalse();
      assertThat(rows.belongTo("first")).as("asking changes nothing").isTrue();
    }
  }

  @Test
  void theyStillDoAfterAStop() {
    try (RowStore rows = RowStore.open(folder, RowSettings.DEFAULT)) {
      assertThat(rows.belongTo("first")).isTrue();
    }

    try (RowStore again = RowStore.open(folder, RowSettings.DEFAULT)) {
      assertThat(again.belongTo("second")).isFalse();
      assertThat(again.belongTo("first")).isTrue();
    }
  }
}
