package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;

/** Makes texts that keep to a schema. For one thread. */
final class WordMaker {

  private static final List<String> ID_CHARACTERS =
      List.of("a", "b", "Z", "0", "9", ".", "~", "-", "_");

  /** What is easily mistaken on the way: quotes, escapes, controls, beyond ASCII and the BMP. */
  private static final List<String> CHARACTERS =
      List.of("a", "Z", " ", "\"", "\\", "/", "\n", "\u0001", "\u007f", "é", "€", "\u2028", "🐕");

  private static final List<String> ZONES =
      List.copyOf(new TreeSet<>(ZoneId.getAvailableZoneIds()));
  private static final int ID_LENGTH = 64;
  private static final int USUAL_LENGTH = 12;

  private final SplittableRandom random;

  WordMaker(SplittableRandom random) {
    this.random = random;
  }

  /** A text of a schema's pattern, format and length. */
  String make(JsonNode schema) {
    String pattern = schema.path("pattern").asText();
    String format = schema.path("format").asText();
    if (format.equals("date-time")) {
      return time();
    }
    if (format.equals("date")) {
      return date().toString();
    }
    if (format.startsWith("uri")) {
      return pick(List.of("urn:poleward:made", "https://made.example/a?b=c#d", "x:/y"));
    }
    if (pattern.startsWith("^(?!")) {
      String id = id(true);
      return id.equals(".") ? "a" : id;
    }
    if (pattern.startsWith("^[A-Za-z0-9.")) {
      return id(pattern.contains("_"));
    }
    if (pattern.startsWith("^(([1-57-9]")) {
      return clock();
    }
    if (pattern.startsWith("^[^@")) {
      return "made-" + id(true) + "@saltmarsh.example";
    }
    if (pattern.startsWith("^[A-Za-z][A-Za-z0-9_+-]*(/")) {
      return pick(ZONES);
    }
    if (!pattern.isEmpty()) {
      throw new IllegalArgumentException("no text of this pattern is made: " + pattern);
    }
    return text(schema.path("minLength").asInt(), schema.path("maxLength").asInt());
  }

  /** A name for a setting or an attribute. */
  String name() {
    return "made" + random.nextInt(100);
  }

  /** One of few short ids, so that they meet, or a long one. */
  private String id(boolean underscore) {
    int length = random.nextInt(20) == 0 ? ID_LENGTH : 1;
    StringBuilder id = new StringBuilder();
    for (int i = 0; i < length; i++) {
      id.append(ID_CHARACTERS.get(random.nextInt(ID_CHARACTERS.size() - (underscore ? 0 : 1))));
    }
    return id.toString();
  }

  private String clock() {
    int halfHours = random.nextInt(24);
    String clock = (halfHours / 2 == 0 ? 12 : halfHours / 2) + (halfHours % 2 == 0 ? ":00" : ":30");
    return clock.equals("6:00") ? "12:00" : clock;
  }

  private LocalDate date() {
    return LocalDate.of(1900, 1, 1).plusDays(random.nextInt(300 * 365));
  }

  private String time() {
    return "%s%s%02d:%02d:%02d%s%s"
        .formatted(
            date(),
            pick(List.of("T", "t")),
            random.nextInt(24),
            random.nextInt(60),
            random.nextInt(60),
            pick(List.of("", ".5", ".123456789", ".000")),
            pick(List.of("Z", "z", "+00:00", "+01:00", "-00:30", "+18:00", "-17:59")));
  }

  private String text(int least, int most) {
    int length =
        switch (random.nextInt(20)) {
          case 0 -> most;
          case 1 -> least;
          default -> Math.min(most, least + random.nextInt(USUAL_LENGTH));
        };
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < length; i++) {
      text.append(pick(CHARACTERS));
    }
    return text.toString();
  }

  private <T> T pick(List<T> from) {
    return from.get(random.nextInt(from.size()));
  }
}
