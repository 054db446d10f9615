package dev.poleward.service.codec;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.CrossAt;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.JumpTurn;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.event.RepEvent;
import dev.poleward.domain.event.RepEvent.RepAmended;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.RepField;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardDelivery;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import dev.poleward.domain.event.Stride;
import dev.poleward.domain.layout.Setup;
import org.jspecify.annotations.Nullable;

/** Reps as JSON. */
public final class RepCodec {

  private RepCodec() {}

  static RepLogged readLogged(Members in) {
    return new RepLogged(
        in.text("rep"),
        in.text("session"),
        in.text("dog"),
        in.choice("manoeuvre", Manoeuvre.class),
        in.choice("outcome", Outcome.class),
        readDetails(in));
  }

  static RepAmended readAmended(Members in) {
    return new RepAmended(
        in.text("rep"),
        in.optionalText("session"),
        in.optionalText("dog"),
        in.optionalChoice("manoeuvre", Manoeuvre.class),
        in.optionalChoice("outcome", Outcome.class),
        readDetails(in),
        MemberNames.cleared(in, RepField.class));
  }

  private static RepDetails readDetails(Members in) {
    Members setup = in.optionalObject("setup");
    return new RepDetails(
        in.optionalChoice("dogSide", DogSide.class),
        in.optionalChoice("backChainStep", BackChainStep.class),
        in.optionalChoice("jumpTurn", JumpTurn.class),
        in.optionalNumber("lateralDistance"),
        in.optionalText("handlerAt"),
        in.optionalChoice("crossAt", CrossAt.class),
        SetupCodec.readApproach(in),
        setup == null ? null : SetupCodec.read(setup),
        in.optionalText("poleSet"),
        in.optionalWhole("atPole"),
        in.optionalList("rewards", each -> readReward(new Members((ObjectNode) each))),
        in.optionalChoice("help", Help.class),
        in.optionalText("handler"),
        in.optionalText("observer"),
        in.optionalWhole("drive"),
        in.optionalChoice("stride", Stride.class));
  }

  private static Reward readReward(Members in) {
    return new Reward(
        in.choice("kind", RewardKind.class),
        in.choice("at", RewardPlace.class),
        in.optionalWhole("count"),
        in.optionalChoice("delivery", RewardDelivery.class));
  }

  static ObjectNode write(RepEvent event) {
    Writing out = new Writing().put("rep", event.rep());
    switch (event) {
      case RepLogged e -> {
        out.put("session", e.session())
            .put("dog", e.dog())
            .put("manoeuvre", e.manoeuvre())
            .put("outcome", e.outcome());
        writeDetails(out, e.details());
      }
      case RepAmended e -> {
        out.put("session", e.session())
            .put("dog", e.dog())
            .put("manoeuvre", e.manoeuvre())
            .put("outcome", e.outcome());
        writeDetails(out, e.details());
        MemberNames.writeCleared(out, e.cleared());
      }
    }
    return out.done();
  }

  /** Adds all that was said of a rep besides what must be; the approach as it was said. */
  public static void writeDetails(Writing out, RepDetails details) {
    SetupCodec.writeApproach(out, details.approach());
    writeHandling(out, details);
    out.put("setup", written(details.setup())).put("poleSet", details.poleSet());
  }

  /** Adds what was said of a rep without where the dog started and what stood. */
  public static void writeHandling(Writing out, RepDetails details) {
    out.put("dogSide", details.dogSide())
        .put("backChainStep", details.backChainStep())
        .put("jumpTurn", details.jumpTurn())
        .put("lateralDistance", details.lateralDistance())
        .put("handlerAt", details.handlerAt())
        .put("crossAt", details.crossAt())
        .put("atPole", details.atPole())
        .putObjects("rewards", details.rewards(), RepCodec::writeReward)
        .put("help", details.help())
        .put("handler", details.handler())
        .put("observer", details.observer())
        .put("drive", details.drive())
        .put("stride", details.stride());
  }

  private static @Nullable ObjectNode written(@Nullable Setup setup) {
    return setup == null ? null : SetupCodec.write(setup);
  }

  private static ObjectNode writeReward(Reward reward) {
    return new Writing()
        .put("kind", reward.kind())
        .put("at", reward.at())
        .put("count", reward.count())
        .put("delivery", reward.delivery())
        .done();
  }
}
