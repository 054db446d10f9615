package dev.poleward.service.render;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.NextRung;
import dev.poleward.domain.programme.ProgrammeInForce;
import java.util.List;

/**
 * What a picture of a dog's way through its programme is of.
 *
 * @param next what is to be worked on, in that order
 */
public record DogWay(
    DogInPicture dog, ProgrammeInForce inForce, DogStanding standing, List<Next> next) {

  /** Keeps the list from changing. */
  public DogWay {
    next = List.copyOf(next);
  }

  /**
   * Something to be worked on.
   *
   * @param reason what it is and why, in a sentence
   */
  public record Next(NextRung rung, String reason) {}
}
