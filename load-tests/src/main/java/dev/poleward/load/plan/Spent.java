package dev.poleward.load.plan;

import dev.poleward.domain.planning.PlanBlock;

/** What a rep of a plan was for. */
enum Spent {
  /** To begin or to end with what goes well. */
  BEGIN_AND_END("begin, end"),
  /** On a rung of the programme that was not passed yet: it counts for its test. */
  TEST("tests"),
  /** From a smaller angle, on the way to a rung. */
  STONE("stones"),
  /** What slipped or was due. */
  KEEPING("mend, refresh"),
  /** A look ahead. */
  PROBE("probes"),
  /** After two misses running. */
  EASIER("easier");

  private final String words;

  Spent(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  /**
   * What a rep of a block is for.
   *
   * @param isTest whether it can bring its rung on
   */
  static Spent on(PlanBlock block, boolean isTest) {
    return switch (block.purpose()) {
      case WARM_UP, FINISH -> BEGIN_AND_END;
      case MEND, REFRESH, KEEP -> KEEPING;
      case PROBE -> PROBE;
      case WORK -> isTest ? TEST : STONE;
    };
  }
}
