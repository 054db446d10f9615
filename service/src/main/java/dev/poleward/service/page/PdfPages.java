package dev.poleward.service.page;

import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.text;

import dev.poleward.service.render.Picture;
import dev.poleward.service.render.Press;
import dev.poleward.service.render.Studio;
import j2html.tags.DomContent;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Sheaves for the press: A4, letters and pictures as outlines that stay sharp, text that can be
 * read out and searched. Safe for use by many threads.
 */
public final class PdfPages {

  /** The media type. */
  public static final String PDF = "application/pdf";

  /** Between the margins of A4, in pixels of CSS. */
  private static final double PAPER_WIDTH = 686;

  /** Of the narrowest cell that a name may stand in, likewise. */
  private static final double CELL_WIDTH = 116;

  /** A picture finds room on a page of its own. */
  private static final double FIGURE_HEIGHT_MAX = 900;

  private final Studio studio;
  private final String style = PageStyle.read("page.css") + PageStyle.read("print.css");

  /** Pages that are printed there. */
  public PdfPages(Studio studio) {
    this.studio = studio;
  }

  /** The file; empty when its turn did not come in time. */
  public Optional<byte[]> of(Sheaf sheaf) {
    OnPaper flavour = new OnPaper();
    String markup = new Markup(flavour, style).of(sheaf);
    return studio.printed(new Press.Print(sheaf.day(), markup, flavour.pictures));
  }

  private static final class OnPaper implements Flavour {

    private final Map<String, Picture> pictures = new HashMap<>();

    /** Text that our letters lack is painted, with the machine's if it has any. */
    @Override
    public DomContent words(String text) {
      return within(text, PAPER_WIDTH);
    }

    @Override
    public DomContent cell(String text) {
      return within(text, CELL_WIDTH);
    }

    private DomContent within(String text, double width) {
      return Studio.canWrite(text) ? text(text) : object(Studio.painted(text, width), text);
    }

    @Override
    public DomContent figure(Picture picture) {
      return object(picture, picture.title() + ". " + picture.inWords());
    }

    /** As large as it is drawn, where the paper is wide enough. */
    private DomContent object(Picture picture, String inWords) {
      double wide = picture.width() * picture.scale();
      double high = picture.height() * picture.scale();
      double fit = Math.min(1, Math.min(PAPER_WIDTH / wide, FIGURE_HEIGHT_MAX / high));
      String name = "picture-" + pictures.size();
      pictures.put(name, picture);
      return rawHtml(
          String.format(
              Locale.ROOT,
              "<object type=\"%s\" data=\"%s\" title=\"%s\" style=\"width:%.2fpx;height:%.2fpx\"></object>",
              Press.PICTURE,
              name,
              j2html.utils.EscapeUtil.escape(inWords),
              wide * fit,
              high * fit));
    }
  }
}
