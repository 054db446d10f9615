package dev.poleward.service.projection;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A folder of rows as it lies on disk. */
record StoredRows(Path folder) {

  /**
   * What a kill would leave now, in another folder: files as they are, whether closed or not. Where
   * the store itself changes files meanwhile, the copy is made anew.
   */
  StoredRows copiedTo(Path copy) {
    try {
      Map<Path, byte[]> files = contents();
      while (files.isEmpty() || !files.keySet().equals(contents().keySet())) {
        files = contents();
      }
      for (Map.Entry<Path, byte[]> file : files.entrySet()) {
        Path target = copy.resolve(folder.relativize(file.getKey()));
        Files.createDirectories(Objects.requireNonNull(target.getParent()));
        Files.write(target, file.getValue());
      }
      return new StoredRows(copy);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Map<Path, byte[]> contents() throws IOException {
    Map<Path, byte[]> contents = new TreeMap<>();
    for (Path file : files(".*")) {
      try {
        contents.put(file, Files.readAllBytes(file));
      } catch (NoSuchFileException e) {
        return Map.of();
      }
    }
    return contents;
  }

  /** Files whose names match, in the order of their names. */
  List<Path> files(String regex) {
    return listed(folder).stream()
        .flatMap(inside -> listed(inside).stream())
        .filter(file -> file.getFileName().toString().matches(regex))
        .filter(Files::isRegularFile)
        .sorted()
        .toList();
  }

  /** Unlike a walk, a list does not mind that what it lists is gone by now. */
  private static List<Path> listed(Path where) {
    try (Stream<Path> all = Files.list(where)) {
      return all.toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  List<Path> tables() {
    return files(".*[.]sst");
  }

  /** What was written last and is not in a table yet. */
  List<Path> logs() {
    return files("[0-9]+[.]log");
  }
}
