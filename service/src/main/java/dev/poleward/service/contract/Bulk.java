package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import dev.poleward.service.contract.Findings.Weight;
import java.util.Map;

/**
 * Looks through a tree before its schema does: for lists and objects so large that looking closer
 * would only cost, and for names that the schema's reader passes over.
 */
final class Bulk {

  /** Far above every list and object that the contract allows. */
  private static final int CHILDREN_MAX = 1_000;

  private Bulk() {}

  /** Notes what is too large or named so; false when a closer look is not worth its cost. */
  static boolean within(JsonNode tree, Findings findings) {
    return isPlain(tree) || within(tree, "", findings);
  }

  /** Whether there is nothing to note, as almost always: then no pointers are made. */
  private static boolean isPlain(JsonNode tree) {
    if (tree.size() > CHILDREN_MAX) {
      return false;
    }
    if (tree.isObject()) {
      for (Map.Entry<String, JsonNode> member : tree.properties()) {
        if (isPassedOver(member.getKey())
            || (member.getValue().isContainerNode() && !isPlain(member.getValue()))) {
          return false;
        }
      }
      return true;
    }
    for (int i = 0; i < tree.size(); i++) {
      if (!isPlain(tree.get(i))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isPassedOver(String name) {
    return name.startsWith("#");
  }

  private static boolean within(JsonNode tree, String pointer, Findings findings) {
    if (tree.size() > CHILDREN_MAX) {
      findings.add(pointer, "has more than %d members".formatted(CHILDREN_MAX), Weight.KIND);
      return false;
    }
    boolean within = true;
    for (Map.Entry<String, JsonNode> member : tree.properties()) {
      String at = Pointers.member(pointer, member.getKey());
      if (isPassedOver(member.getKey())) {
        findings.add(at, "is not known here", Weight.KIND);
      } else {
        within &= within(member.getValue(), at, findings);
      }
    }
    for (int i = 0; tree.isArray() && i < tree.size(); i++) {
      within &= within(tree.get(i), Pointers.item(pointer, i), findings);
    }
    return within;
  }
}
