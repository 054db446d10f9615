package dev.poleward.domain.record;

import dev.poleward.domain.event.DogEvent.DogMerged;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which registrations are one animal. Of several merges of one dog the latest (time, id) wins;
 * where merges run in a circle, the least id of the circle stands for all.
 */
public final class DogIdentity {

  private final Map<String, String> into = new HashMap<>();

  /** Follows the merges that count in this view. */
  public DogIdentity(Corrections corrections, Knowledge knowledge) {
    List<Fact<DogMerged>> merges = new ArrayList<>(corrections.merges());
    merges.removeIf(merge -> !knowledge.counts(merge));
    merges.sort(Precedence.BY_MOMENT);
    for (Fact<DogMerged> merge : merges) {
      into.put(merge.event().dog(), merge.event().into());
    }
  }

  /** The registration under which that dog is known now: often its own. */
  public String of(String dog) {
    if (!into.containsKey(dog)) {
      return dog;
    }
    Set<String> passed = new LinkedHashSet<>();
    String current = dog;
    while (passed.add(current)) {
      String next = into.get(current);
      if (next == null) {
        return current;
      }
      current = next;
    }
    return leastOfCircle(current);
  }

  private String leastOfCircle(String onCircle) {
    TreeSet<String> circle = new TreeSet<>();
    String current = onCircle;
    while (circle.add(current)) {
      current = into.getOrDefault(current, current);
    }
    return circle.first();
  }

  /** All registrations that are one animal with {@code dog}, itself included, ascending. */
  public Set<String> group(String dog) {
    String identity = of(dog);
    Set<String> group = new TreeSet<>();
    group.add(dog);
    group.add(identity);
    for (String merged : into.keySet()) {
      if (of(merged).equals(identity)) {
        group.add(merged);
      }
    }
    return group;
  }
}
