package dev.poleward.service.render;

import dev.poleward.domain.pace.Pace;
import dev.poleward.domain.pace.PaceOfKind;
import java.util.Optional;

/**
 * What a picture of a dog's times is of.
 *
 * @param days that were looked at, the day of the dog the last of them
 * @param slowing whether it slows, in a sentence
 */
public record DogTimes(DogInPicture dog, int days, Pace pace, String slowing) {

  /** The kind with the most runs; of several, the first. */
  Optional<PaceOfKind> mostRun() {
    return pace.kinds().stream()
        .reduce((one, other) -> other.seconds().of() > one.seconds().of() ? other : one);
  }
}
