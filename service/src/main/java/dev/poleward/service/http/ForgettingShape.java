package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.judgement.Forgetting;
import dev.poleward.domain.mastery.Confidence;
import dev.poleward.service.codec.Writing;
import java.util.List;

/** How a dog forgets, and what that rests on, as the contract's {@code Forgetting}. */
final class ForgettingShape {

  private static final Confidence CONFIDENCE = Confidence.of(0.95);

  /** Days without practice that shares are told for: a week, a month, two. */
  private static final List<Integer> DAYS = List.of(7, 30, 60);

  private ForgettingShape() {}

  static ObjectNode of(Forgetting forgetting) {
    return new Writing()
        .put("dueAfterDays", forgetting.dueAfterDays())
        .putObjects("expected", DAYS, days -> after(forgetting, days))
        .put("returns", forgetting.returns())
        .put("ownShare", forgetting.ownShare())
        .put("clubDogs", forgetting.club().dogs())
        .put("clubReturns", forgetting.club().returns())
        .put("clubDueAfterDays", forgetting.clubDueAfterDays())
        .done();
  }

  private static ObjectNode after(Forgetting forgetting, int days) {
    return new Writing()
        .put("days", days)
        .put("clean", ShareShape.of(forgetting.retention().after(days, CONFIDENCE)))
        .done();
  }
}
