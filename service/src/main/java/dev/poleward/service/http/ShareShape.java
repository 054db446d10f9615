package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.service.codec.Writing;

/** A share with its limits, as the contract's {@code ShareWithLimits}. */
final class ShareShape {

  private ShareShape() {}

  static ObjectNode of(Estimate share) {
    return new Writing()
        .put("share", share.value())
        .put("lower", share.lower())
        .put("upper", share.upper())
        .done();
  }
}
