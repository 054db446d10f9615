package dev.poleward.service.contract;

import java.util.List;

/** What became of judging an event. */
public sealed interface Judgement {

  /** It is in order. */
  record Accepted(SentEvent event) implements Judgement {}

  /** It is not; all its faults, 100 at most, one for each pointer. */
  record Refused(List<Fault> faults) implements Judgement {

    /** Keeps the faults from changing. */
    public Refused {
      faults = List.copyOf(faults);
    }
  }
}
