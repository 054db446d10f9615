package dev.poleward.service.journal;

/** What the value of an extension is. A header carries text only, so the kind travels beside it. */
enum ExtensionKind {
  TEXT("text"),
  BOOLEAN("boolean"),
  INTEGER("integer"),
  LONG("long");

  final String word;

  ExtensionKind(String word) {
    this.word = word;
  }

  /**
   * The kind of a value.
   *
   * @throws IllegalArgumentException when it is none of these
   */
  static ExtensionKind of(Object value) {
    return switch (value) {
      case String _ -> TEXT;
      case Boolean _ -> BOOLEAN;
      case Integer _ -> INTEGER;
      case Long _ -> LONG;
      default ->
          throw new IllegalArgumentException(
              "an extension is text, a whole number or a truth value, not a "
                  + value.getClass().getSimpleName());
    };
  }

  /**
   * The kind that a word stands for.
   *
   * @throws IllegalArgumentException when it stands for none
   */
  static ExtensionKind ofWord(String word) {
    for (var kind : values()) {
      if (kind.word.equals(word)) {
        return kind;
      }
    }
    throw new IllegalArgumentException("no kind of value is called " + word);
  }

  /**
   * The value that a text means.
   *
   * @throws IllegalArgumentException when it is none of this kind
   */
  Object read(String text) {
    return switch (this) {
      case TEXT -> text;
      case INTEGER -> Integer.valueOf(text);
      case LONG -> Long.valueOf(text);
      case BOOLEAN -> {
        if (!text.equals("true") && !text.equals("false")) {
          throw new IllegalArgumentException(text + " is neither true nor false");
        }
        yield Boolean.valueOf(text);
      }
    };
  }
}
