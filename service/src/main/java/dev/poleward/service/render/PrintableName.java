package dev.poleward.service.render;

import org.jspecify.annotations.Nullable;

/** Names as pictures can show them: people write them, and a picture stays a picture. */
final class PrintableName {

  private PrintableName() {}

  /** What of a name can be shown; {@code otherwise} where nothing can. */
  static String of(@Nullable String name, String otherwise) {
    String printable = name == null ? "" : Printable.of(name);
    return printable.isEmpty() ? otherwise : printable;
  }
}
