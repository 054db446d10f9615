package dev.poleward.service.page;

import dev.poleward.service.render.Picture;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One thing on a page. Texts are plain: whatever they hold, they are shown as they are. */
public sealed interface Block {

  /** What the blocks below it are about. */
  record Heading(String text) implements Block {}

  /** A paragraph. */
  record Paragraph(String text) implements Block {}

  /** A paragraph that explains, in quieter letters. */
  record Aside(String text) implements Block {}

  /** Sentences that belong together and have no order. */
  record Bullets(List<String> texts) implements Block {}

  /** Something that may hurt, or could: what kind it is in a word, what to do, and who says so. */
  record Notice(String kind, String text, @Nullable String source) implements Block {}

  /** Names and what stands beside them. */
  record Facts(List<Fact> facts) implements Block {}

  /** One of them. */
  record Fact(String name, String value) {}

  /** A table. Each row has a cell for each column; an empty text is an empty cell. */
  record Table(String caption, List<Column> columns, List<List<String>> rows) implements Block {}

  /** A column of a table. */
  record Column(String head, Kind kind) {

    /** What is in its cells. */
    public enum Kind {
      TEXT,
      /** Held to the right, so that digits stand below each other. */
      NUMBER
    }

    /** A column of texts. */
    public static Column text(String head) {
      return new Column(head, Kind.TEXT);
    }

    /** A column of numbers. */
    public static Column number(String head) {
      return new Column(head, Kind.NUMBER);
    }
  }

  /**
   * An empty table, to be filled in by hand; what is known of each row stands in its first cell.
   */
  record Blanks(String caption, List<String> heads, List<String> rows) implements Block {}

  /** A picture, as wide as the page. */
  record Figure(Picture picture) implements Block {}
}
