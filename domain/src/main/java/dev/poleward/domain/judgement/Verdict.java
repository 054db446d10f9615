package dev.poleward.domain.judgement;

/** What is to be done on a rung, with what the test has seen. From the worst to the best. */
public sealed interface Verdict {

  /** What the programme's test has seen. */
  Evidence evidence();

  /** So many misses in a row that something easier is due. */
  record StepBack(Evidence evidence, int missesInARow) implements Verdict {}

  /** Not there yet: stay. */
  record Hold(Evidence evidence) implements Verdict {}

  /** Cannot be told yet, or not every handling was clean: go on. */
  record Undecided(Evidence evidence) implements Verdict {}

  /** Mastered. */
  record MoveOn(Evidence evidence) implements Verdict {}

  /** 0 to 3, the better the higher. */
  default int rank() {
    return switch (this) {
      case StepBack it -> 0;
      case Hold it -> 1;
      case Undecided it -> 2;
      case MoveOn it -> 3;
    };
  }
}
