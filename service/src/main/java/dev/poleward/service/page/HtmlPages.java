package dev.poleward.service.page;

import static j2html.TagCreator.img;
import static j2html.TagCreator.text;

import dev.poleward.service.render.Picture;
import dev.poleward.service.render.Studio;
import j2html.tags.DomContent;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * Sheaves for a browser: one file with everything in it, that needs nothing else and runs nothing.
 * Immutable; safe for use by many threads.
 */
public final class HtmlPages {

  /** The media type. */
  public static final String HTML = "text/html";

  private final Studio studio;
  private final String style = PageStyle.read("page.css");
  private final String policy =
      "default-src 'none'; img-src data:; style-src 'sha256-%s'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'"
          .formatted(hash(style));

  /** Pages whose pictures are painted there. */
  public HtmlPages(Studio studio) {
    this.studio = studio;
  }

  /** What a browser may do with these pages (Content-Security-Policy). */
  public String policy() {
    return policy;
  }

  /** The file. */
  public byte[] of(Sheaf sheaf) {
    return new Markup(new InBrowser(), style).of(sheaf).getBytes(StandardCharsets.UTF_8);
  }

  private final class InBrowser implements Flavour {

    @Override
    public DomContent words(String text) {
      return text(text);
    }

    @Override
    public DomContent cell(String text) {
      return text(text);
    }

    /** As an image of its own, whose ids cannot meet those of another. */
    @Override
    public DomContent figure(Picture picture) {
      String data = Base64.getEncoder().encodeToString(studio.svg(picture));
      return img()
          .withSrc("data:image/svg+xml;base64," + data)
          .withAlt(picture.title() + ". " + picture.inWords());
    }
  }

  private static String hash(String style) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(style.getBytes(StandardCharsets.UTF_8));
      return Base64.getEncoder().encodeToString(hash);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
