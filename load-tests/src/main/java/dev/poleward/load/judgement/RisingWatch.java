package dev.poleward.load.judgement;

import dev.poleward.domain.judgement.CusumScore;
import dev.poleward.domain.judgement.SlipWatch;

/** The service's own watch. For one thread. */
public final class RisingWatch implements Watch {

  private final SlipWatch watch;
  private CusumScore score;

  public RisingWatch(SlipWatch watch) {
    this.watch = watch;
    this.score = watch.begun();
  }

  @Override
  public boolean sees(boolean clean) {
    score = watch.seen(score, clean);
    return score.sounds();
  }
}
