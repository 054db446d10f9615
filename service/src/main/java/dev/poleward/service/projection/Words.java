package dev.poleward.service.projection;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.CrossAt;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.JumpTurn;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RewardDelivery;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import dev.poleward.domain.event.Stride;
import dev.poleward.domain.layout.LeadIn;
import java.util.List;

/**
 * Words that stand in packed rows by their place in these lists. New ones go to the end; whoever
 * moves or takes one away begins the next generation of rows, or rows of this one would say
 * something else.
 */
final class Words {

  static final List<Manoeuvre> MANOEUVRES = List.of(Manoeuvre.values());
  static final List<Outcome> OUTCOMES = List.of(Outcome.values());
  static final List<DogSide> DOG_SIDES = List.of(DogSide.values());
  static final List<BackChainStep> BACK_CHAIN_STEPS = List.of(BackChainStep.values());
  static final List<JumpTurn> JUMP_TURNS = List.of(JumpTurn.values());
  static final List<CrossAt> CROSSES = List.of(CrossAt.values());
  static final List<Help> HELPS = List.of(Help.values());
  static final List<Stride> STRIDES = List.of(Stride.values());
  static final List<RewardKind> REWARD_KINDS = List.of(RewardKind.values());
  static final List<RewardPlace> REWARD_PLACES = List.of(RewardPlace.values());
  static final List<RewardDelivery> REWARD_DELIVERIES = List.of(RewardDelivery.values());
  static final List<LeadIn> LEAD_INS = List.of(LeadIn.values());

  /** All of them. */
  static final List<List<? extends Enum<?>>> ALL =
      List.of(
          MANOEUVRES,
          OUTCOMES,
          DOG_SIDES,
          BACK_CHAIN_STEPS,
          JUMP_TURNS,
          CROSSES,
          HELPS,
          STRIDES,
          REWARD_KINDS,
          REWARD_PLACES,
          REWARD_DELIVERIES,
          LEAD_INS);

  private Words() {}
}
