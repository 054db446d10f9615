package dev.poleward.service.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Why drills that follow each other are in a plan, where the reason is the same for all of them.
 *
 * @param first number of the first
 * @param drills in their order, never empty
 */
record DrillReasons(int first, List<PlanOnPaper.Drill> drills) {

  /** All reasons of a plan, in the order of its drills. */
  static List<DrillReasons> of(List<PlanOnPaper.Drill> drills) {
    List<DrillReasons> all = new ArrayList<>();
    int first = 0;
    for (int i = 1; i <= drills.size(); i++) {
      if (i == drills.size() || !reason(drills.get(i)).equals(reason(drills.get(first)))) {
        all.add(new DrillReasons(first + 1, List.copyOf(drills.subList(first, i))));
        first = i;
      }
    }
    return all;
  }

  private static String reason(PlanOnPaper.Drill drill) {
    return drill.reason() == null ? drill.words() + "." : drill.reason();
  }

  /** The numbers, the reason and what is easier. */
  String words() {
    return numbers() + ". " + reason(drills.getFirst()) + easier();
  }

  private String numbers() {
    int last = first + drills.size() - 1;
    return switch (drills.size()) {
      case 1 -> String.valueOf(first);
      case 2 -> first + " and " + last;
      default -> first + " to " + last;
    };
  }

  private String easier() {
    Map<String, List<Integer>> instead = new LinkedHashMap<>();
    for (int i = 0; i < drills.size(); i++) {
      String easier = drills.get(i).easier();
      if (easier != null) {
        instead.computeIfAbsent(easier, _ -> new ArrayList<>()).add(first + i);
      }
    }
    if (instead.isEmpty()) {
      return "";
    }
    Map.Entry<String, List<Integer>> any = instead.entrySet().iterator().next();
    return any.getValue().size() == drills.size()
        ? " After two misses running: " + any.getKey() + "."
        : " After two misses running, "
            + instead.entrySet().stream()
                .map(each -> "instead of " + listed(each.getValue()) + ": " + each.getKey())
                .collect(Collectors.joining("; "))
            + ".";
  }

  private static String listed(List<Integer> numbers) {
    return numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
  }
}
