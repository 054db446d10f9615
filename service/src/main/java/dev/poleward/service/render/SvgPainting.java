package dev.poleward.service.render;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * A picture as SVG 1.1. Text stays text, held where it was laid out; the whole is one image to a
 * screen reader, with a title and a description. For one thread and one picture.
 */
final class SvgPainting {

  /**
   * All of these have the widths that pictures are laid out with; the last is whatever there is.
   */
  private static final String FONTS =
      "'Liberation Sans', Arial, Helvetica, Arimo, 'Noto Sans', sans-serif";

  private static final String NAMESPACE = "http://www.w3.org/2000/svg";

  private final XMLStreamWriter out;

  private SvgPainting(XMLStreamWriter out) {
    this.out = out;
  }

  static byte[] of(Picture picture) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      XMLStreamWriter out =
          XMLOutputFactory.newDefaultFactory()
              .createXMLStreamWriter(bytes, StandardCharsets.UTF_8.name());
      new SvgPainting(out).paint(picture);
      out.close();
    } catch (XMLStreamException e) {
      throw new IllegalStateException("XML can be written to memory", e);
    }
    return bytes.toByteArray();
  }

  private void paint(Picture picture) throws XMLStreamException {
    out.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
    out.writeCharacters("\n");
    out.writeStartElement("svg");
    out.writeDefaultNamespace(NAMESPACE);
    out.writeAttribute("width", number(picture.width() * picture.scale()));
    out.writeAttribute("height", number(picture.height() * picture.scale()));
    out.writeAttribute(
        "viewBox", "0 0 " + number(picture.width()) + " " + number(picture.height()));
    out.writeAttribute("role", "img");
    out.writeAttribute("aria-labelledby", "poleward-title poleward-in-words");
    out.writeAttribute("lang", "en");
    out.writeAttribute("font-family", FONTS);
    out.writeAttribute("stroke-linecap", "butt");
    out.writeAttribute("stroke-linejoin", "round");
    told("title", "poleward-title", picture.title());
    told("desc", "poleward-in-words", picture.inWords());
    for (Mark mark : picture.marks()) {
      out.writeCharacters("\n");
      paint(mark);
    }
    out.writeCharacters("\n");
    out.writeEndElement();
    out.writeEndDocument();
    out.writeCharacters("\n");
  }

  private void told(String element, String id, String text) throws XMLStreamException {
    out.writeCharacters("\n");
    out.writeStartElement(element);
    out.writeAttribute("id", id);
    out.writeCharacters(text);
    out.writeEndElement();
  }

  private void paint(Mark mark) throws XMLStreamException {
    switch (mark) {
      case Mark.Filled filled -> {
        path(filled.shape());
        out.writeAttribute("fill", filled.ink().hex());
      }
      case Mark.Drawn drawn -> {
        path(drawn.shape());
        out.writeAttribute("fill", "none");
        out.writeAttribute("stroke", drawn.ink().hex());
        out.writeAttribute("stroke-width", number(drawn.pen().width()));
        if (!drawn.pen().dashes().isEmpty()) {
          out.writeAttribute("stroke-dasharray", dashes(drawn.pen().dashes()));
        }
      }
      case Mark.Words words -> paint(words);
    }
  }

  private void paint(Mark.Words words) throws XMLStreamException {
    out.writeStartElement("text");
    out.writeAttribute("x", number(words.x()));
    out.writeAttribute("y", number(words.y()));
    out.writeAttribute("font-size", number(words.type().size()));
    if (words.type().bold()) {
      out.writeAttribute("font-weight", "bold");
    }
    switch (words.hold()) {
      case LEFT -> {}
      case MIDDLE -> out.writeAttribute("text-anchor", "middle");
      case RIGHT -> out.writeAttribute("text-anchor", "end");
    }
    out.writeAttribute("fill", words.ink().hex());
    out.writeCharacters(words.text());
    out.writeEndElement();
  }

  private void path(Shape shape) throws XMLStreamException {
    out.writeEmptyElement("path");
    out.writeAttribute("d", steps(shape));
  }

  private static String steps(Shape shape) {
    StringBuilder steps = new StringBuilder();
    double[] at = new double[6];
    for (PathIterator path = shape.getPathIterator(null); !path.isDone(); path.next()) {
      switch (path.currentSegment(at)) {
        case PathIterator.SEG_MOVETO -> step(steps, 'M', at, 2);
        case PathIterator.SEG_LINETO -> step(steps, 'L', at, 2);
        case PathIterator.SEG_QUADTO -> step(steps, 'Q', at, 4);
        case PathIterator.SEG_CUBICTO -> step(steps, 'C', at, 6);
        case PathIterator.SEG_CLOSE -> steps.append('Z');
        default -> throw new IllegalStateException("a path has five kinds of steps");
      }
    }
    return steps.toString();
  }

  private static void step(StringBuilder steps, char kind, double[] at, int numbers) {
    steps.append(kind);
    for (int i = 0; i < numbers; i++) {
      steps.append(i == 0 ? "" : " ").append(number(at[i]));
    }
  }

  private static String dashes(List<Double> dashes) {
    return dashes.stream().map(SvgPainting::number).collect(Collectors.joining(" "));
  }

  /** To a hundredth, without what says nothing. */
  private static String number(double value) {
    long hundredths = Math.round(value * 100);
    if (hundredths % 100 == 0) {
      return Long.toString(hundredths / 100);
    }
    return hundredths % 10 == 0
        ? String.format(Locale.ROOT, "%.1f", hundredths / 100.0)
        : String.format(Locale.ROOT, "%.2f", hundredths / 100.0);
  }
}
