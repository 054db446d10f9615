package dev.poleward.load.figures;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A program's arguments, {@code name=value}, each with a default. Whoever asks for a value tells us
 * its name, so that the settings that were used can be printed. For one thread.
 */
public final class Arguments {

  private final Map<String, String> given = new LinkedHashMap<>();
  private final Map<String, String> used = new LinkedHashMap<>();
  private final Set<String> apart = new HashSet<>();

  /**
   * Takes the words of a command line.
   *
   * @throws IllegalArgumentException when one is no {@code name=value}
   */
  public Arguments(String[] words) {
    for (String word : words) {
      int equals = word.indexOf('=');
      if (equals <= 0) {
        throw new IllegalArgumentException(word + " is not name=value");
      }
      given.put(word.substring(0, equals), word.substring(equals + 1));
    }
  }

  /** A text. */
  public String text(String name, String otherwise) {
    String value = given.getOrDefault(name, otherwise);
    used.put(name, value);
    return value;
  }

  /** A whole number of at least {@code least}. */
  public int whole(String name, int otherwise, int least) {
    String value = text(name, Integer.toString(otherwise));
    try {
      int number = Integer.parseInt(value);
      if (number >= least) {
        return number;
      }
    } catch (NumberFormatException e) {
      // Falls through: no number and too small a one need the same words.
    }
    throw new IllegalArgumentException(
        name + " must be a whole number from " + least + ", not " + value);
  }

  /** Whole numbers with commas between, at least one, each at least 1. */
  public List<Integer> wholes(String name, String otherwise) {
    List<Integer> numbers = new ArrayList<>();
    for (String each : text(name, otherwise).split(",", -1)) {
      numbers.add(Integer.parseInt(each));
    }
    return numbers;
  }

  /** One of several words. */
  public String oneOf(String name, String... words) {
    String value = text(name, words[0]);
    if (!Arrays.asList(words).contains(value)) {
      throw new IllegalArgumentException(
          name + " must be one of " + String.join(", ", words) + ", not " + value);
    }
    return value;
  }

  /** Leaves a name out of the settings that are printed: it changes no figure. */
  private void keepApart(String name) {
    apart.add(name);
  }

  /** How long the program may take, {@code limitMinutes}. */
  public Duration limit(int otherwiseMinutes) {
    keepApart("limitMinutes");
    return Duration.ofMinutes(whole("limitMinutes", otherwiseMinutes, 1));
  }

  /** Whether what is on disk is kept at the end, {@code keep=yes}. */
  public boolean keep() {
    keepApart("keep");
    return oneOf("keep", "no", "yes").equals("yes");
  }

  /**
   * All settings that were used, to be called when all have been asked for.
   *
   * @throws IllegalArgumentException when one was given that nobody asked for
   */
  public String settings() {
    List<String> unknown = given.keySet().stream().filter(name -> !used.containsKey(name)).toList();
    if (!unknown.isEmpty()) {
      throw new IllegalArgumentException(unknown + " is not known; known: " + used.keySet());
    }
    return used.entrySet().stream()
        .filter(each -> !apart.contains(each.getKey()))
        .map(each -> each.getKey() + "=" + each.getValue())
        .collect(Collectors.joining(" "));
  }
}
