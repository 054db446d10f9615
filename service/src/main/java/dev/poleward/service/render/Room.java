package dev.poleward.service.render;

import java.awt.geom.Rectangle2D;

/**
 * The room that is kept round text: viewers that lack the font set it in another, and most of those
 * are wider by up to {@value #WIDER}.
 */
final class Room {

  /** DejaVu Sans against Liberation Sans, which is about the widest that stands in for it. */
  static final double WIDER = 1.18;

  private Room() {}

  static Rectangle2D around(Mark.Words words) {
    return new Mark.Words(
            words.text(),
            words.plain(),
            words.x(),
            words.y(),
            words.hold(),
            words.type(),
            words.ink(),
            words.width() * WIDER)
        .box();
  }
}
