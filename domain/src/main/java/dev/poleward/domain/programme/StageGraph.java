package dev.poleward.domain.programme;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Which stages come after which, and whether each can be reached. Looks at ids and prerequisites
 * alone, so that a stage which is wrong in another way does not make those after it look wrong too.
 */
final class StageGraph {

  private static final int IDS_TOLD_MAX = 5;

  private record Node(Part part, List<@Nullable String> prerequisites, StageKind kind) {}

  /** The first stage of each id, in the document's order. */
  private final Map<String, Node> nodes = new LinkedHashMap<>();

  private StageGraph() {}

  /** Notes what is wrong with the ids and the prerequisites of these stages. */
  static void judge(List<Part> stages) {
    StageGraph graph = new StageGraph();
    List<Node> all = stages.stream().map(graph::added).toList();
    all.forEach(graph::judgePrerequisites);
    graph.judgeReach();
  }

  private Node added(Part stage) {
    Node node =
        new Node(
            stage,
            stage.ids("prerequisites", ProgrammeDocument.STAGES_MAX),
            Boolean.TRUE.equals(stage.truth("probe")) ? StageKind.PROBE : StageKind.REGULAR);
    String id = stage.id("stage");
    if (id != null && nodes.putIfAbsent(id, node) != null) {
      stage.fault("stage", "is the id of an earlier stage already");
    }
    return node;
  }

  private void judgePrerequisites(Node node) {
    int at = 0;
    for (String id : node.prerequisites()) {
      Node before = id == null ? null : nodes.get(id);
      if (id != null && before == null) {
        node.part().fault("prerequisites/" + at, "must be a stage of this programme");
      } else if (before != null
          && before.kind() == StageKind.PROBE
          && node.kind() != before.kind()) {
        node.part()
            .fault("prerequisites/" + at, "must not be a probe: nothing has to wait for one");
      }
      at++;
    }
  }

  private void judgeReach() {
    Set<String> told = new HashSet<>();
    for (String id : unreached()) {
      Set<String> before = before(id);
      if (before.contains(id)) {
        if (told.add(id)) {
          Set<String> circle = new LinkedHashSet<>(nodes.keySet());
          circle.removeIf(other -> !before.contains(other) || !before(other).contains(id));
          told.addAll(circle);
          node(id).part().fault("prerequisites", "go in a circle: " + listed(circle));
        }
      } else {
        node(id)
            .part()
            .fault("prerequisites", "come after a circle of stages, so this one is never reached");
      }
    }
  }

  /** Stages whose turn never comes, in the document's order. */
  private Set<String> unreached() {
    Set<String> unreached = new LinkedHashSet<>(nodes.keySet());
    while (unreached.removeIf(
        id -> node(id).prerequisites().stream().noneMatch(unreached::contains))) {
      // Each round reaches those that come after what the rounds before have reached.
    }
    return unreached;
  }

  /** All stages that have to come before that one, directly or not. */
  private Set<String> before(String id) {
    Set<String> before = new HashSet<>();
    Deque<String> next = new ArrayDeque<>(List.of(id));
    while (!next.isEmpty()) {
      for (String each : node(next.pop()).prerequisites()) {
        if (each != null && nodes.containsKey(each) && before.add(each)) {
          next.push(each);
        }
      }
    }
    return before;
  }

  private Node node(String id) {
    Node node = nodes.get(id);
    if (node == null) {
      throw new IllegalStateException("not a stage: " + id);
    }
    return node;
  }

  private static String listed(Set<String> ids) {
    String first = String.join(", ", ids.stream().limit(IDS_TOLD_MAX).toList());
    return ids.size() > IDS_TOLD_MAX ? first + " and others" : first;
  }
}
