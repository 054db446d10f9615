package dev.poleward.domain.programme;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * An object within a document, with the way to it. A member that is not as asked gives null and a
 * fault; one that is optional and absent, null alone. Members that nobody asks for are passed over,
 * so that a document of tomorrow can be read today. For one thread.
 */
final class Part {

  private static final Pattern ID = Pattern.compile("[A-Za-z0-9._~-]{1,64}");

  private final Map<?, ?> members;
  private final String pointer;
  private final DocumentFaults faults;

  Part(Map<?, ?> members, String pointer, DocumentFaults faults) {
    this.members = members;
    this.pointer = pointer;
    this.faults = faults;
  }

  boolean has(String name) {
    return members.containsKey(name);
  }

  void fault(String name, String detail) {
    faults.add(pointer + "/" + name, detail);
  }

  /** A fault of this object as a whole. */
  void fault(String detail) {
    faults.add(pointer, detail);
  }

  /** Notes that a member is absent which has to be there. */
  void require(String name) {
    if (!has(name)) {
      fault(name, "is required");
    }
  }

  @Nullable Double number(String name, DoublePredicate allowed, String expected) {
    return has(name) ? number(members.get(name), name, allowed, expected) : null;
  }

  private @Nullable Double number(
      @Nullable Object value, String name, DoublePredicate allowed, String expected) {
    if (value instanceof Number number && allowed.test(number.doubleValue())) {
      return number.doubleValue() + 0.0;
    }
    fault(name, "must be a number " + expected);
    return null;
  }

  @Nullable Integer whole(String name, int min, int max) {
    if (!has(name)) {
      return null;
    }
    if (members.get(name) instanceof Number number) {
      double value = number.doubleValue();
      if (value == Math.rint(value) && value >= min && value <= max) {
        return (int) value;
      }
    }
    fault(name, "must be a whole number from %d to %d".formatted(min, max));
    return null;
  }

  @Nullable String text(String name, int charactersMax) {
    if (!has(name)) {
      return null;
    }
    if (members.get(name) instanceof String text) {
      int characters = text.codePointCount(0, text.length());
      if (characters >= 1 && characters <= charactersMax) {
        return text;
      }
    }
    fault(name, "must be a text of 1 to %d characters".formatted(charactersMax));
    return null;
  }

  @Nullable String id(String name) {
    return has(name) ? id(members.get(name), name) : null;
  }

  private @Nullable String id(@Nullable Object value, String name) {
    if (value instanceof String text && ID.matcher(text).matches()) {
      return text;
    }
    fault(name, "must be an id: 1 to 64 of A-Z a-z 0-9 . _ ~ -");
    return null;
  }

  <E extends Enum<E>> @Nullable E choice(String name, Class<E> choices) {
    return has(name) ? choice(members.get(name), name, choices) : null;
  }

  private <E extends Enum<E>> @Nullable E choice(
      @Nullable Object value, String name, Class<E> choices) {
    for (E choice : choices.getEnumConstants()) {
      if (written(choice).equals(value)) {
        return choice;
      }
    }
    fault(name, "is not one of the words that are known there");
    return null;
  }

  /** How a word is written in documents: {@code REAR_CROSS} is {@code rear-cross}. */
  static String written(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Nullable Boolean truth(String name) {
    if (!has(name)) {
      return null;
    }
    if (members.get(name) instanceof Boolean truth) {
      return truth;
    }
    fault(name, "must be true or false");
    return null;
  }

  @Nullable Part part(String name) {
    return has(name) ? part(members.get(name), name) : null;
  }

  private @Nullable Part part(@Nullable Object value, String name) {
    if (value instanceof Map<?, ?> map) {
      return new Part(map, pointer + "/" + name, faults);
    }
    fault(name, "must be an object");
    return null;
  }

  /** Objects of a list; those that are none are left out and noted. */
  List<Part> parts(String name, int min, int max) {
    List<Part> parts = new ArrayList<>();
    for (Item item : items(name, min, max)) {
      Part part = part(item.value(), item.at());
      if (part != null) {
        parts.add(part);
      }
    }
    return parts;
  }

  /** Ids of a list, each in its place; null for what is none. */
  List<@Nullable String> ids(String name, int max) {
    List<@Nullable String> ids = new ArrayList<>();
    for (Item item : items(name, 0, max)) {
      ids.add(id(item.value(), item.at()));
    }
    noneTwice(name, ids);
    return ids;
  }

  /** Words of a list; those that are none are left out and noted. */
  <E extends Enum<E>> List<E> choices(String name, int max, Class<E> choices) {
    List<E> found = new ArrayList<>();
    for (Item item : items(name, 0, max)) {
      E choice = choice(item.value(), item.at(), choices);
      if (choice != null) {
        found.add(choice);
      }
    }
    noneTwice(name, found);
    return found;
  }

  /** Texts of a list, each read into something; those that cannot be are left out and noted. */
  <T> List<T> texts(String name, int max, Function<String, Optional<T>> reading, String expected) {
    List<T> found = new ArrayList<>();
    for (Item item : items(name, 1, max)) {
      Optional<T> read =
          item.value() instanceof String text ? reading.apply(text) : Optional.empty();
      read.ifPresentOrElse(found::add, () -> fault(item.at(), expected));
    }
    noneTwice(name, found);
    return found;
  }

  private void noneTwice(String name, List<?> items) {
    List<?> there = items.stream().filter(Objects::nonNull).toList();
    if (new HashSet<>(there).size() < there.size()) {
      fault(name, "must not name anything twice");
    }
  }

  /** A value in a list, and where it lies. */
  private record Item(@Nullable Object value, String at) {}

  private List<Item> items(String name, int min, int max) {
    if (!has(name)) {
      return List.of();
    }
    if (!(members.get(name) instanceof List<?> list)) {
      fault(name, "must be a list");
      return List.of();
    }
    if (list.size() < min || list.size() > max) {
      fault(name, "must have %d to %d items".formatted(min, max));
    }
    List<Item> items = new ArrayList<>();
    for (int at = 0; at < Math.min(list.size(), max); at++) {
      items.add(new Item(list.get(at), name + "/" + at));
    }
    return items;
  }
}
