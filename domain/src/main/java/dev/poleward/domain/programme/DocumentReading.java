package dev.poleward.domain.programme;

import java.util.List;

/** What became of reading a programme's document. */
public sealed interface DocumentReading {

  /** It is in order. */
  record Sound(Programme programme) implements DocumentReading {}

  /**
   * It is not.
   *
   * @param faults all of them, {@link ProgrammeDocument#FAULTS_MAX} at most, never empty
   */
  record Faulty(List<DocumentFault> faults) implements DocumentReading {

    /** Keeps the faults from changing. */
    public Faulty {
      faults = List.copyOf(faults);
    }
  }
}
