package dev.poleward.service.page;

import dev.poleward.service.render.Picture;
import j2html.tags.DomContent;

/** What differs between a page for a browser and the same page for the press. */
interface Flavour {

  /** A line of text. */
  DomContent words(String text);

  /** The same in a cell of a table, which is narrow. */
  DomContent cell(String text);

  /** A picture with its description. */
  DomContent figure(Picture picture);
}
