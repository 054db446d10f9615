package dev.poleward.service.render;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import com.openhtmltopdf.render.RenderingContext;
import com.openhtmltopdf.util.XRLog;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.w3c.dom.Element;

/** Prints markup as PDF. Fetches nothing. Safe for use by many threads. */
public final class Press {

  /** The media type under which markup names its pictures. */
  public static final String PICTURE = "application/x-poleward-picture";

  private static final Logger LOG = LoggerFactory.getLogger(Press.class);

  static {
    // It would write to the platform's own log, past ours; what it says comes to us as well.
    XRLog.setLoggingEnabled(false);
  }

  private static final String FAMILY = "Liberation Sans";
  private static final int REGULAR = 400;
  private static final int BOLD = 700;

  /** Where the markup comes from: nowhere that anything could be fetched from. */
  private static final String NOTHING = "about:blank";

  private Press() {}

  /**
   * What is printed.
   *
   * @param day that the file is of: the same print is the same bytes, whenever it is made
   * @param markup well-formed
   * @param pictures by the names that the markup's objects have for them
   */
  public record Print(LocalDate day, String markup, Map<String, Picture> pictures) {

    /** Keeps the pictures from changing. */
    public Print {
      pictures = Map.copyOf(pictures);
    }
  }

  static byte[] of(Print print, Lettering lettering) {
    try (PDDocument file = new PDDocument();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
      DefaultObjectDrawerFactory drawers = new DefaultObjectDrawerFactory();
      drawers.registerDrawer(PICTURE, new Painter(print.pictures(), lettering));
      PdfRendererBuilder builder = new PdfRendererBuilder();
      builder.withDiagnosticConsumer(said -> LOG.debug("{}", said.getFormattedMessage()));
      builder.usePdfUaAccessibility(true);
      builder.usePDDocument(file);
      builder.useFont(
          () -> font("LiberationSans-Regular"), FAMILY, REGULAR, FontStyle.NORMAL, true);
      builder.useFont(() -> font("LiberationSans-Bold"), FAMILY, BOLD, FontStyle.NORMAL, true);
      builder.useObjectDrawerFactory(drawers);
      builder.useUriResolver((_, _) -> null);
      builder.withHtmlContent(print.markup(), NOTHING);
      builder.toStream(bytes);
      try (var renderer = builder.buildPdfRenderer()) {
        renderer.layout();
        renderer.createPDFWithoutClosing();
        date(file, print.day());
        file.save(bytes);
      }
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException("a page can be printed to memory", e);
    }
  }

  private static void date(PDDocument file, LocalDate day) {
    GregorianCalendar made = GregorianCalendar.from(day.atStartOfDay(ZoneOffset.UTC));
    file.getDocumentInformation().setCreationDate(made);
    file.getDocumentInformation().setModificationDate(made);
    file.setDocumentId(day.toEpochDay());
  }

  private static InputStream font(String name) {
    return Objects.requireNonNull(
        Press.class.getResourceAsStream("/liberation/" + name + ".ttf"),
        "the font comes with the service");
  }

  private record Painter(Map<String, Picture> pictures, Lettering lettering)
      implements FSObjectDrawer {

    @Override
    public Map<Shape, String> drawObject(
        Element element,
        double x,
        double y,
        double width,
        double height,
        OutputDevice device,
        RenderingContext context,
        int dotsPerPixel) {
      Picture picture = pictures.get(element.getAttribute("data"));
      if (picture != null) {
        device.drawWithGraphics(
            (float) x,
            (float) y,
            (float) (width / dotsPerPixel),
            (float) (height / dotsPerPixel),
            graphics -> paint(picture, graphics, width / dotsPerPixel));
      }
      return Map.of();
    }

    private void paint(Picture picture, Graphics2D graphics, double width) {
      double scale = width / picture.width();
      graphics.scale(scale, scale);
      new MarkPainting(lettering, graphics).paint(picture);
    }
  }
}
