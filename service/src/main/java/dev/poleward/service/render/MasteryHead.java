package dev.poleward.service.render;

/** The head of every picture of angle mastery: the dog's name and what is counted. */
final class MasteryHead {

  private MasteryHead() {}

  /**
   * Writes it.
   *
   * @return where it ends
   */
  static double draw(Sheet sheet, DogCurve of, double x, double top, double width) {
    MasteryWords words = new MasteryWords(of);
    return DogHead.draw(sheet, of.dog(), of.callName(), words.about(), words.aged(), x, top, width);
  }
}
