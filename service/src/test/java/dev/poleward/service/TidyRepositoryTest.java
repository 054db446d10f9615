package dev.poleward.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Keeps the house in order, so that reviews can be about what the code says. */
class TidyRepositoryTest {

  private static final int JAVA_LINES_MAX = 400;

  private static final Set<String> TOP_LEVEL =
      Set.of(
          ".ci",
          ".dockerignore",
          ".editorconfig",
          ".gitattributes",
          ".gitignore",
          ".mvn",
          "CHANGELOG.md",
          "DEVELOPERS.md",
          "LICENSE",
          "README.md",
          "SECURITY.md",
          "compose.yaml",
          "contracts",
          "docs",
          "domain",
          "load-tests",
          "pom.xml",
          "service");

  /** What builds, editors and a running service leave behind; .gitignore knows the same names. */
  private static final Set<String> LEFT_BEHIND =
      Set.of(
          ".DS_Store",
          ".classpath",
          ".git",
          ".idea",
          ".project",
          ".settings",
          ".vscode",
          "data",
          "node_modules",
          "target");

  /** Written in two halves, or this file would be its own first fault. */
  private static final Pattern UNFINISHED = Pattern.compile("\\b(TO" + "DO|FIX" + "ME)\\b");

  private static final Pattern TRAILING = Pattern.compile("[ \\t]\\r?$");

  // Surefire starts us in the folder of the module.
  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();

  private static List<Path> files = List.of();

  @BeforeAll
  static void walk() throws IOException {
    assertThat(ROOT.resolve("pom.xml")).exists();
    var found = new ArrayList<Path>();
    Files.walkFileTree(
        ROOT,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
            return isLeftBehind(folder) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            if (attributes.isRegularFile() && !isLeftBehind(file)) {
              found.add(file);
            }
            return FileVisitResult.CONTINUE;
          }
        });
    files = List.copyOf(found);
  }

  @Test
  void topLevelHoldsJustWhatAReaderLooksFor() throws IOException {
    try (var entries = Files.list(ROOT)) {
      assertThat(entries.filter(entry -> !isLeftBehind(entry)).map(TidyRepositoryTest::nameOf))
          .allSatisfy(name -> assertThat(TOP_LEVEL).contains(name));
    }
  }

  @Test
  void linesHoldNoTabsNoTrailingSpaceAndNothingUnfinished() {
    assertThat(files.stream().flatMap(TidyRepositoryTest::untidyLines)).isEmpty();
  }

  @Test
  void javaFilesAreShortEnoughToRead() {
    assertThat(files)
        .filteredOn(file -> nameOf(file).endsWith(".java"))
        .allSatisfy(file -> assertThat(linesOf(file)).hasSizeLessThanOrEqualTo(JAVA_LINES_MAX));
  }

  @Test
  void everyPackageSaysWhatLivesThere() {
    var packages =
        files.stream()
            .filter(file -> nameOf(file).endsWith(".java"))
            .map(Path::getParent)
            .distinct()
            .toList();

    assertThat(packages)
        .isNotEmpty()
        .allSatisfy(folder -> assertThat(describedIn(folder)).as("%s", folder).isTrue());
  }

  /** Tests may rely on the page of the package that they test. */
  private static boolean describedIn(Path folder) {
    var main = folder.toString().replace("/src/test/java/", "/src/main/java/");
    return Stream.of(folder, Path.of(main))
        .map(place -> place.resolve("package-info.java"))
        .anyMatch(Files::exists);
  }

  private static Stream<String> untidyLines(Path file) {
    var lines = linesOf(file);
    return IntStream.range(0, lines.size())
        .filter(at -> isUntidy(lines.get(at)))
        .mapToObj(at -> "%s:%d: %s".formatted(ROOT.relativize(file), at + 1, lines.get(at)));
  }

  private static boolean isUntidy(String line) {
    return line.indexOf('\t') >= 0
        || TRAILING.matcher(line).find()
        || UNFINISHED.matcher(line).find();
  }

  /** The lines of a text; none where the file is no text. */
  private static List<String> linesOf(Path file) {
    try {
      var text = Files.readString(file);
      return text.indexOf('\0') < 0 ? List.of(text.split("\n")) : List.of();
    } catch (CharacterCodingException notText) {
      return List.of();
    } catch (IOException unreadable) {
      throw new AssertionError(file + " cannot be read", unreadable);
    }
  }

  private static boolean isLeftBehind(Path path) {
    var name = nameOf(path);
    return LEFT_BEHIND.contains(name) || name.endsWith(".iml");
  }

  private static String nameOf(Path path) {
    return String.valueOf(path.getFileName());
  }
}
