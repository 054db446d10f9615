package dev.poleward.service.render;

import dev.poleward.domain.judgement.StageRewards;
import dev.poleward.domain.programme.Programme;
import java.time.ZoneId;
import java.util.List;

/**
 * What a picture of fading rewards is of.
 *
 * @param zone of the club's days
 * @param stages of which something was told, in the programme's order
 */
public record DogRewards(
    DogInPicture dog, Programme programme, ZoneId zone, List<StageRewards> stages) {

  /** Keeps the list from changing. */
  public DogRewards {
    stages = List.copyOf(stages);
  }
}
