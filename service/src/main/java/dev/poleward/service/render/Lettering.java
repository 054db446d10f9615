package dev.poleward.service.render;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The letters of every picture: Liberation Sans, which comes with the service. Its widths are those
 * of Arial and Helvetica, so an SVG that a viewer sets in one of these looks as it was laid out. It
 * has Latin, Greek, Cyrillic and Hebrew letters.
 *
 * <p>The shapes of letters are read from the font's file and not asked of AWT, whose fonts need
 * libraries that a bare machine lacks, and come out differently on each. Only for text that this
 * font has no letters for, the machine's own fonts are tried. Safe for use by many threads.
 */
final class Lettering {

  /** Nobody writes so many different letters; beyond it they are made anew each time. */
  private static final int GLYPHS_MAX = 4_096;

  private record Face(TrueTypeFont font, CmapLookup letters, double unitsPerEm) {

    static Face load(String name) {
      String path = "/liberation/" + name + ".ttf";
      try (InputStream in = Objects.requireNonNull(Lettering.class.getResourceAsStream(path))) {
        TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in));
        return new Face(font, font.getUnicodeCmapLookup(), font.getUnitsPerEm());
      } catch (IOException e) {
        throw new UncheckedIOException("the font comes with the service", e);
      }
    }
  }

  /** Stands for a letter that this font lacks. */
  private static final String NO_LETTER = "?";

  /** A letter of size 1. */
  private record Glyph(Shape shape, double advance) {}

  private record Letter(int codePoint, boolean bold) {}

  private final Face regular = Face.load("LiberationSans-Regular");
  private final Face bold = Face.load("LiberationSans-Bold");
  private final Map<Letter, Glyph> glyphs = new ConcurrentHashMap<>();

  /** Whether this font has a letter for everything in the text. */
  boolean knows(String text) {
    return text.codePoints().allMatch(each -> regular.letters().getGlyphId(each) != 0);
  }

  /** The text with what this font has no letters for marked, so that the rest can be read. */
  String plain(String text) {
    if (knows(text)) {
      return text;
    }
    StringBuilder plain = new StringBuilder();
    text.codePoints()
        .mapToObj(Character::toString)
        .map(letter -> knows(letter) ? letter : NO_LETTER)
        .forEach(plain::append);
    return plain.toString();
  }

  /**
   * How wide a line of text is. Letters that the font lacks are taken to be as wide as a Chinese
   * character, which is the widest there is in most scripts, and pictures of things a bit wider.
   */
  double width(String text, Type type) {
    return text.codePoints().mapToDouble(each -> advance(each, type.bold())).sum() * type.size();
  }

  private double advance(int codePoint, boolean inBold) {
    if (regular.letters().getGlyphId(codePoint) != 0) {
      return glyph(codePoint, inBold).advance();
    }
    return switch (Character.getType(codePoint)) {
      case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> 0;
      default -> Character.isSupplementaryCodePoint(codePoint) ? 1.3 : 1;
    };
  }

  /** The outline of a line of text that begins at (0, 0) on its base line; empty when none can. */
  Optional<Shape> outline(String text, Type type) {
    return knows(text) ? Optional.of(ownOutline(text, type)) : machineOutline(text, type);
  }

  private Shape ownOutline(String text, Type type) {
    Path2D outline = new Path2D.Double(Path2D.WIND_NON_ZERO);
    double x = 0;
    for (int codePoint : text.codePoints().toArray()) {
      Glyph glyph = glyph(codePoint, type.bold());
      AffineTransform place = AffineTransform.getScaleInstance(type.size(), -type.size());
      place.translate(x, 0);
      outline.append(glyph.shape().getPathIterator(place), false);
      x += glyph.advance();
    }
    return outline;
  }

  private Glyph glyph(int codePoint, boolean inBold) {
    Letter letter = new Letter(codePoint, inBold);
    Glyph known = glyphs.get(letter);
    if (known == null) {
      known = read(inBold ? bold : regular, codePoint);
      if (glyphs.size() < GLYPHS_MAX) {
        glyphs.put(letter, known);
      }
    }
    return known;
  }

  private static Glyph read(Face face, int codePoint) {
    int id = face.letters().getGlyphId(codePoint);
    // The font's tables are read as they are needed, from one place in one file.
    synchronized (face) {
      try {
        GlyphData data = face.font().getGlyph().getGlyph(id);
        Path2D shape = data == null ? new Path2D.Double() : new Path2D.Double(data.getPath());
        double unit = 1 / face.unitsPerEm();
        shape.transform(AffineTransform.getScaleInstance(unit, unit));
        return new Glyph(shape, face.font().getAdvanceWidth(id) * unit);
      } catch (IOException e) {
        throw new UncheckedIOException("the font is in memory", e);
      }
    }
  }

  /** In the machine's own fonts, no wider than it was measured; empty when they cannot. */
  private Optional<Shape> machineOutline(String text, Type type) {
    try {
      Font font = new Font(Font.SANS_SERIF, type.bold() ? Font.BOLD : Font.PLAIN, 1);
      if (font.canDisplayUpTo(text) >= 0) {
        return Optional.empty();
      }
      TextLayout layout =
          new TextLayout(
              text, font.deriveFont((float) type.size()), new FontRenderContext(null, true, true));
      double squeeze = Math.min(1, width(text, type) / layout.getAdvance());
      return Optional.of(layout.getOutline(AffineTransform.getScaleInstance(squeeze, 1)));
    } catch (RuntimeException | LinkageError e) {
      // A machine without fonts, or without what AWT finds them with. There is the plain text.
      return Optional.empty();
    }
  }
}
