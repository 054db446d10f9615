package dev.poleward.service.render;

/**
 * The sizes of type of every picture. None is below 12, which is what a phone at arm's length still
 * lets one read.
 */
enum Type {
  TITLE(23, true),
  HEADING(17, true),
  SAYING(15, true),
  TEXT(14, false),
  NUMBER(13, true),
  NOTE(13, false),
  SMALL(12, false);

  private final double size;
  private final boolean bold;

  Type(double size, boolean bold) {
    this.size = size;
    this.bold = bold;
  }

  /** Height of the em, in units of the sheet. */
  double size() {
    return size;
  }

  boolean bold() {
    return bold;
  }

  /** From one base line to the next. */
  double leading() {
    return size * 1.32;
  }

  /** From the base line up to the top of the highest letters. */
  double ascent() {
    return size * 0.78;
  }

  /** From the base line down to the end of the deepest letters. */
  double descent() {
    return size * 0.23;
  }
}
