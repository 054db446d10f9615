package dev.poleward.domain.learner;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The page about the simulated dog states every parameter as it is. */
class LearnerPageTest {

  // Surefire starts us in the folder of the module.
  private static final Path PAGE = Path.of("..", "docs", "learner.md");

  private static final List<Temper> COLUMNS =
      List.of(Temper.ORDINARY, Temper.QUICK, Temper.STEADY, Temper.SENSITIVE, Temper.BOLD);

  /** Every number of a temper under its name, as {@code entry.pole.rate}. */
  private static Map<String, Double> numbersOf(Record part, String prefix) {
    Map<String, Double> numbers = new LinkedHashMap<>();
    for (RecordComponent component : part.getClass().getRecordComponents()) {
      String name = prefix + component.getName();
      try {
        switch (component.getAccessor().invoke(part)) {
          case Record inner -> numbers.putAll(numbersOf(inner, name + "."));
          case Double number -> numbers.put(name, number);
          case Object other -> throw new AssertionError(name + " is no number: " + other);
        }
      } catch (ReflectiveOperationException e) {
        throw new AssertionError("a record can be read", e);
      }
    }
    return numbers;
  }

  @Test
  void everyParameterIsInTheTableWithTheValuesInUse() throws IOException {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    for (String line : Files.readAllLines(PAGE)) {
      if (line.startsWith("| `") && line.chars().filter(c -> c == '|').count() == 9) {
        List<String> cells = List.of(line.substring(2, line.length() - 2).split(" \\| "));
        rows.put(cells.getFirst().replace("`", ""), cells.subList(3, cells.size()));
      }
    }

    Map<String, List<Double>> stated = new LinkedHashMap<>();
    rows.forEach((name, cells) -> stated.put(name, cells.stream().map(Double::valueOf).toList()));
    Map<String, List<Double>> used = new LinkedHashMap<>();
    for (Temper temper : COLUMNS) {
      numbersOf(temper, "")
          .forEach((name, value) -> used.computeIfAbsent(name, _ -> new ArrayList<>()).add(value));
    }
    assertThat(stated).isEqualTo(used);
  }
}
