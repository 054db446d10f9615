package dev.poleward.service.http;

import dev.poleward.domain.record.View;
import dev.poleward.service.codec.Ids;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.contract.Fault;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads query parameters and remembers every fault. For one thread. */
final class Parameters {

  static final int LIMIT_MAX = 1_000;
  private static final int LIMIT_DEFAULT = 100;

  /** More of an unknown name is not repeated. */
  private static final int NAME_MAX = 64;

  /** As the contract has it; what the calendar forbids besides, the parser finds. */
  private static final Pattern TIME =
      Pattern.compile(
          "(19|20|21)\\d\\d-\\d\\d-\\d\\d[Tt]\\d\\d:\\d\\d:\\d\\d(\\.\\d{1,9})?"
              + "([Zz]|\\+\\d\\d:\\d\\d|-(?!00:00)\\d\\d:\\d\\d)");

  private static final Pattern DATE = Pattern.compile("(19|20|21)\\d\\d-\\d\\d-\\d\\d");

  private static final Pattern NUMBER = Pattern.compile("-?\\d{1,17}(\\.\\d{1,17})?");

  private final Call call;
  private final List<Fault> faults = new ArrayList<>();

  /**
   * Reads a call's parameters.
   *
   * @param known the only names that the route knows
   */
  Parameters(Call call, Set<String> known) {
    this.call = call;
    call.query()
        .forEach(
            (name, values) -> {
              if (!known.contains(name)) {
                String shown = name.substring(0, Math.min(name.length(), NAME_MAX));
                faults.add(new Fault(shown, "is not known here"));
              } else if (values.size() > 1) {
                faults.add(new Fault(name, "is given more than once"));
              }
            });
  }

  private @Nullable String value(String name) {
    List<String> values = call.query().get(name);
    return values == null || values.isEmpty() ? null : values.getFirst();
  }

  /** The view that {@code asOf} and {@code knownAt} ask for. */
  View view() {
    return new View(instant("asOf"), instant("knownAt"));
  }

  private @Nullable Instant instant(String name) {
    String text = value(name);
    if (text == null) {
      return null;
    }
    try {
      if (TIME.matcher(text).matches()) {
        return OffsetDateTime.parse(text).toInstant();
      }
    } catch (DateTimeException e) {
      // Falls through to the fault: no such day, and no such form, need the same sentence.
    }
    // A plus sign that was not encoded arrives as a space; the sentence helps to see that.
    faults.add(
        new Fault(
            name,
            "must be a time that exists, of the years 1900 to 2199, RFC 3339 with an offset,"
                + " + written as %2B"));
    return null;
  }

  /** A day of the calendar, 1900 to 2199; null when none is given. */
  @Nullable LocalDate date(String name) {
    String text = value(name);
    if (text == null) {
      return null;
    }
    try {
      if (DATE.matcher(text).matches()) {
        return LocalDate.parse(text);
      }
    } catch (DateTimeException e) {
      // Falls through to the fault: no such day, and no such form, need the same sentence.
    }
    faults.add(
        new Fault(name, "must be a day that exists, of the years 1900 to 2199, as 2026-05-04"));
    return null;
  }

  /** An id; null when none is given. */
  @Nullable String id(String name) {
    String text = value(name);
    if (text == null || Ids.isId(text)) {
      return text;
    }
    faults.add(new Fault(name, "must be 1 to 64 of A-Z a-z 0-9 . _ ~ -, and not . or .."));
    return null;
  }

  /** Whether a parameter is given at all. */
  boolean isGiven(String name) {
    return value(name) != null;
  }

  /** Says what is wrong with a parameter. */
  void refuse(String name, String detail) {
    faults.add(new Fault(name, detail));
  }

  /** How many items on a page, 1 to {@value #LIMIT_MAX}. */
  int limit() {
    return (int) whole("limit", 1, LIMIT_MAX, LIMIT_DEFAULT);
  }

  long whole(String name, long least, long most, long otherwise) {
    String text = value(name);
    if (text == null) {
      return otherwise;
    }
    try {
      long whole = Long.parseLong(text);
      if (whole >= least && whole <= most) {
        return whole;
      }
    } catch (NumberFormatException e) {
      // Falls through to the fault: a text and a number out of range need the same sentence.
    }
    faults.add(new Fault(name, "must be a whole number from " + least + " to " + most));
    return otherwise;
  }

  /** A number; null when none is given. */
  @Nullable Double number(String name, double least, double most) {
    return number(name, least, most, "");
  }

  /**
   * A number; null when none is given.
   *
   * @param besides what else could have been said, for whoever said neither
   */
  @Nullable Double number(String name, double least, double most, String besides) {
    String text = value(name);
    if (text == null) {
      return null;
    }
    if (NUMBER.matcher(text).matches()) {
      double number = Double.parseDouble(text);
      if (number >= least && number <= most) {
        return number;
      }
    }
    faults.add(
        new Fault(
            name, "must be a number from " + written(least) + " to " + written(most) + besides));
    return null;
  }

  private static String written(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }

  /** Whether a parameter is given as that word. */
  boolean says(String name, String word) {
    return word.equals(value(name));
  }

  /** One of a fixed choice, in lower case with hyphens; null when none is given. */
  <E extends Enum<E>> @Nullable E oneOf(String name, Class<E> kind) {
    String text = value(name);
    if (text == null) {
      return null;
    }
    List<String> names = new ArrayList<>();
    for (E each : kind.getEnumConstants()) {
      if (Writing.wireName(each).equals(text)) {
        return each;
      }
      names.add(Writing.wireName(each));
    }
    faults.add(new Fault(name, "must be one of " + String.join(", ", names)));
    return null;
  }

  /** What {@link #cursor(String)} made, or null at the beginning. */
  @Nullable String cursor() {
    String text = value("cursor");
    if (text == null) {
      return null;
    }
    try {
      String place = new String(Base64.getUrlDecoder().decode(text), StandardCharsets.UTF_8);
      if (!place.isEmpty() && cursor(place).equals(text)) {
        return place;
      }
    } catch (IllegalArgumentException e) {
      // Falls through to the fault: what is no Base64 and what we would write otherwise are alike.
    }
    refuseCursor();
    return null;
  }

  /** Says that the cursor is none of ours. */
  void refuseCursor() {
    faults.add(new Fault("cursor", "is none that this service gave"));
  }

  /** A cursor that brings {@code place} back. */
  static String cursor(String place) {
    return Base64.getUrlEncoder()
        .withoutPadding()
        .encodeToString(place.getBytes(StandardCharsets.UTF_8));
  }

  /** What is wrong with the parameters, if anything is. */
  Optional<Problem> problem() {
    return faults.isEmpty()
        ? Optional.empty()
        : Optional.of(Problem.inParameters(List.copyOf(faults)));
  }
}
