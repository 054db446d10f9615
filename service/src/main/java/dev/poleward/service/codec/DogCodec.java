package dev.poleward.service.codec;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.DogEvent;
import dev.poleward.domain.event.DogEvent.DogAmended;
import dev.poleward.domain.event.DogEvent.DogCleared;
import dev.poleward.domain.event.DogEvent.DogMerged;
import dev.poleward.domain.event.DogEvent.DogRegistered;
import dev.poleward.domain.event.DogEvent.DogRested;
import dev.poleward.domain.event.DogTrait;
import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.HeatRisk;

/** What is said of dogs as JSON. */
public final class DogCodec {

  private DogCodec() {}

  static DogRegistered readRegistered(Members in) {
    return new DogRegistered(in.text("dog"), in.text("callName"), readTraits(in));
  }

  static DogAmended readAmended(Members in) {
    return new DogAmended(
        in.text("dog"),
        in.optionalText("callName"),
        readTraits(in),
        MemberNames.cleared(in, DogTrait.class));
  }

  static DogMerged readMerged(Members in) {
    return new DogMerged(in.text("dog"), in.text("into"));
  }

  static DogRested readRested(Members in) {
    return new DogRested(in.text("dog"), in.optionalText("reason"), in.optionalDate("until"));
  }

  static DogCleared readCleared(Members in) {
    return new DogCleared(in.text("dog"), in.optionalText("by"), in.optionalDocument("limits"));
  }

  private static DogTraits readTraits(Members in) {
    return new DogTraits(
        in.optionalDate("born"),
        in.optionalNumber("withersHeight"),
        in.optionalChoice("heatRisk", HeatRisk.class),
        in.optionalTexts("handlers"),
        in.optionalTruth("guest"));
  }

  static ObjectNode write(DogEvent event) {
    Writing out = new Writing().put("dog", event.dog());
    switch (event) {
      case DogRegistered e -> writeTraits(out.put("callName", e.callName()), e.traits());
      case DogAmended e -> {
        writeTraits(out.put("callName", e.callName()), e.traits());
        MemberNames.writeCleared(out, e.cleared());
      }
      case DogMerged e -> out.put("into", e.into());
      case DogRested e -> out.put("reason", e.reason()).putPrinted("until", e.until());
      case DogCleared e -> out.put("by", e.by()).put("limits", e.limits());
    }
    return out.done();
  }

  /** Adds what is known of a dog besides its name. */
  public static void writeTraits(Writing out, DogTraits traits) {
    out.putPrinted("born", traits.born())
        .put("withersHeight", traits.withersHeight())
        .put("heatRisk", traits.heatRisk())
        .putTexts("handlers", traits.handlers())
        .put("guest", traits.guest());
  }
}
