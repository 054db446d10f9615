package dev.poleward.service.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DataFolderTest {

  @TempDir Path place;

  @Test
  void aNewFolderIsForThisUserAloneAndCanBeOpenedAgain() throws IOException {
    var path = place.resolve("a/b");
    try (var folder = DataFolder.open(path)) {
      assertThat(folder.journal()).isDirectory().isEqualTo(path.resolve("journal"));
    }

    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(path)))
        .isEqualTo("rwx------");
    assertThat(path.resolve("poleward.properties")).content().contains("format=1");
    DataFolder.open(path).close();
  }

  @Test
  void oneProcessAtATime() {
    try (var first = DataFolder.open(place)) {
      assertThat(first.path()).isEqualTo(place);

      assertThatThrownBy(() -> DataFolder.open(place))
          .isInstanceOf(CannotStart.class)
          .hasMessageContaining(place.toString())
          .hasMessageContaining("in use by another Poleward");
    }
  }

  @Test
  void aFileIsNoFolder() throws IOException {
    var file = Files.writeString(place.resolve("notes.txt"), "x");

    assertThatThrownBy(() -> DataFolder.open(file))
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining("notes.txt is not a folder");
  }

  @Test
  void aFolderUnderAFileCannotBeMade() throws IOException {
    var file = Files.writeString(place.resolve("notes.txt"), "x");

    assertThatThrownBy(() -> DataFolder.open(file.resolve("data")))
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining("cannot be used as the data folder");
  }

  @Test
  void somebodyElsesFolderIsLeftAlone() throws IOException {
    Files.writeString(place.resolve("thesis.tex"), "x");

    assertThatThrownBy(() -> DataFolder.open(place))
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining("not empty (thesis.tex)");
    assertThat(place.resolve("poleward.properties")).doesNotExist();
  }

  @Test
  void whatANewerVersionWroteIsLeftToIt() throws IOException {
    Files.writeString(place.resolve("poleward.properties"), "format=2\n");

    assertThatThrownBy(() -> DataFolder.open(place))
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining("format 2, and this one reads 1");
  }

  @Test
  void aFolderThatDoesNotSayItsFormatIsRefused() throws IOException {
    Files.writeString(place.resolve("poleward.properties"), "fromat=1\n");

    assertThatThrownBy(() -> DataFolder.open(place))
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining("does not say which format");
  }

  @Test
  void aNearlyFullDiskIsSaid() {
    assertThatThrownBy(() -> DataFolder.open(place, Long.MAX_VALUE))
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining("MiB are left on the disk of " + place);
  }

  @Test
  void theDiskIsNearlyFullOnceTheReserveIsTouched() {
    try (var folder = DataFolder.open(place)) {
      assertThat(folder.diskSpace(0).nearlyFull()).isFalse();
      assertThat(folder.diskSpace(Long.MAX_VALUE).nearlyFull()).isTrue();
    }
  }
}
