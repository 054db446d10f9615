package dev.poleward.service.render;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines that fit, whichever font a viewer sets them in. */
final class Lines {

  private static final String MORE = "…";

  private Lines() {}

  static List<String> of(Lettering lettering, String text, double width, Type type) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && !fits(lettering, longer, width, type)) {
        lines.add(line.toString());
        line.setLength(0);
        line.append(word);
      } else {
        line.setLength(0);
        line.append(longer);
      }
    }
    lines.add(line.toString());
    return lines;
  }

  /**
   * The text on at most {@code most} lines, within words if need be, cut off where it is longer.
   */
  static List<String> cut(Lettering lettering, String text, double width, Type type, int most) {
    List<String> lines = new ArrayList<>();
    for (String line : of(lettering, text, width, type)) {
      String rest = line;
      while (!fits(lettering, rest, width, type)) {
        String part = begin(lettering, rest, width, type);
        lines.add(part);
        rest = rest.substring(part.length());
      }
      lines.add(rest);
    }
    if (lines.size() <= most) {
      return lines;
    }
    List<String> kept = new ArrayList<>(lines.subList(0, most));
    String last = kept.removeLast();
    while (!last.isEmpty() && !fits(lettering, last + MORE, width, type)) {
      last = last.substring(0, last.offsetByCodePoints(last.length(), -1));
    }
    kept.add(last + MORE);
    return kept;
  }

  private static String begin(Lettering lettering, String text, double width, Type type) {
    int end = text.offsetByCodePoints(0, 1);
    while (end < text.length()) {
      int next = text.offsetByCodePoints(end, 1);
      if (!fits(lettering, text.substring(0, next), width, type)) {
        break;
      }
      end = next;
    }
    return text.substring(0, end);
  }

  static boolean fits(Lettering lettering, String text, double width, Type type) {
    return lettering.width(text, type) * Room.WIDER <= width;
  }
}
