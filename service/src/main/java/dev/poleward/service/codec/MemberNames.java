package dev.poleward.service.codec;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/**
 * How fields that an amendment can take away are named on the wire: {@code DOG_SIDE} is {@code
 * dogSide}.
 */
final class MemberNames {

  private MemberNames() {}

  static String of(Enum<?> field) {
    StringBuilder name = new StringBuilder();
    for (String word : field.name().toLowerCase(Locale.ROOT).split("_", -1)) {
      name.append(
          name.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
    }
    return name.toString();
  }

  /**
   * Takes fields away, always in the same order: a set's own differs from one start to the next.
   */
  static void writeCleared(Writing out, Set<? extends Enum<?>> cleared) {
    cleared.stream()
        .sorted(Comparator.comparing(Enum::ordinal))
        .map(MemberNames::of)
        .forEach(out::putNull);
  }

  /** The fields whose members are there and say null. */
  static <F extends Enum<F>> Set<F> cleared(Members in, Class<F> fields) {
    Set<F> cleared = EnumSet.noneOf(fields);
    for (F field : EnumSet.allOf(fields)) {
      if (in.isNull(of(field))) {
        cleared.add(field);
      }
    }
    return cleared;
  }
}
