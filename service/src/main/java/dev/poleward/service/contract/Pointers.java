package dev.poleward.service.contract;

/** JSON Pointers (RFC 6901), step by step. */
final class Pointers {

  private Pointers() {}

  /** The pointer to a member of what {@code parent} points to. */
  static String member(String parent, String name) {
    return parent + "/" + name.replace("~", "~0").replace("/", "~1");
  }

  /** The pointer to an item of the list that {@code parent} points to. */
  static String item(String parent, int index) {
    return parent + "/" + index;
  }
}
