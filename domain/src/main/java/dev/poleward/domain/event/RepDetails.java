package dev.poleward.domain.event;

import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.Setup;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What may be said of a rep besides what must be. The note is sealed, not here.
 *
 * @param lateralDistance metres between handler and poles
 * @param handlerAt where the handler stood or sent from, in the trainer's words
 * @param approach where the dog started; beats the setup's
 * @param setup what stood, said with the rep; beats the session's setups
 * @param poleSet which set of poles; {@code main} when absent
 * @param atPole pole of the fault, 1 to 24
 * @param handler id of who handled
 * @param observer id of who logged
 * @param drive 1 to 3
 */
public record RepDetails(
    @Nullable DogSide dogSide,
    @Nullable BackChainStep backChainStep,
    @Nullable JumpTurn jumpTurn,
    @Nullable Double lateralDistance,
    @Nullable String handlerAt,
    @Nullable CrossAt crossAt,
    @Nullable Approach approach,
    @Nullable Setup setup,
    @Nullable String poleSet,
    @Nullable Integer atPole,
    @Nullable List<Reward> rewards,
    @Nullable Help help,
    @Nullable String handler,
    @Nullable String observer,
    @Nullable Integer drive,
    @Nullable Stride stride) {

  /** Nothing said. */
  public static final RepDetails NONE =
      new RepDetails(
          null, null, null, null, null, null, null, null, null, null, null, null, null, null, null,
          null);

  /** Keeps the rewards from changing. */
  public RepDetails {
    rewards = rewards == null ? null : List.copyOf(rewards);
  }
}
