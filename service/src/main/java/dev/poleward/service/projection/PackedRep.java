package dev.poleward.service.projection;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.CrossAt;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.JumpTurn;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardDelivery;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import dev.poleward.domain.event.Stride;

/** A rep in a row, member by member. */
final class PackedRep {

  private PackedRep() {}

  static void put(RowOutput out, RepLogged rep) {
    RepDetails details = rep.details();
    out.text(rep.rep())
        .text(rep.session())
        .text(rep.dog())
        .word(rep.manoeuvre())
        .word(rep.outcome())
        .word(details.dogSide())
        .word(details.backChainStep())
        .word(details.jumpTurn())
        .real(details.lateralDistance())
        .text(details.handlerAt())
        .word(details.crossAt())
        .text(details.poleSet())
        .small(details.atPole())
        .word(details.help())
        .text(details.handler())
        .text(details.observer())
        .small(details.drive())
        .word(details.stride());
    PackedSetup.putApproach(out, details.approach());
    PackedSetup.putSetup(out, details.setup());
    out.list(details.rewards(), PackedRep::putReward);
  }

  static RepLogged read(RowInput in) {
    String rep = in.text();
    String session = in.text();
    String dog = in.text();
    Manoeuvre manoeuvre = in.word(Words.MANOEUVRES);
    Outcome outcome = in.word(Words.OUTCOMES);
    DogSide dogSide = in.optionalWord(Words.DOG_SIDES);
    BackChainStep backChainStep = in.optionalWord(Words.BACK_CHAIN_STEPS);
    JumpTurn jumpTurn = in.optionalWord(Words.JUMP_TURNS);
    Double lateralDistance = in.optionalReal();
    String handlerAt = in.optionalText();
    CrossAt crossAt = in.optionalWord(Words.CROSSES);
    String poleSet = in.optionalText();
    Integer atPole = in.optionalSmall();
    Help help = in.optionalWord(Words.HELPS);
    String handler = in.optionalText();
    String observer = in.optionalText();
    Integer drive = in.optionalSmall();
    Stride stride = in.optionalWord(Words.STRIDES);
    return new RepLogged(
        rep,
        session,
        dog,
        manoeuvre,
        outcome,
        new RepDetails(
            dogSide,
            backChainStep,
            jumpTurn,
            lateralDistance,
            handlerAt,
            crossAt,
            PackedSetup.readApproach(in),
            PackedSetup.readSetup(in),
            poleSet,
            atPole,
            in.optionalList(PackedRep::readReward),
            help,
            handler,
            observer,
            drive,
            stride));
  }

  private static void putReward(RowOutput out, Reward reward) {
    out.word(reward.kind()).word(reward.at()).small(reward.count()).word(reward.delivery());
  }

  private static Reward readReward(RowInput in) {
    RewardKind kind = in.word(Words.REWARD_KINDS);
    RewardPlace at = in.word(Words.REWARD_PLACES);
    Integer count = in.optionalSmall();
    RewardDelivery delivery = in.optionalWord(Words.REWARD_DELIVERIES);
    return new Reward(kind, at, count, delivery);
  }
}
