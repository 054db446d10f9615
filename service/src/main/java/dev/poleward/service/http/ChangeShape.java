package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.service.codec.Writing;
import org.jspecify.annotations.Nullable;

/** A change of a share, with its limits; nothing where there was none before. */
final class ChangeShape {

  private ChangeShape() {}

  static @Nullable ObjectNode of(@Nullable Estimate change) {
    return change == null
        ? null
        : new Writing()
            .put("value", change.value())
            .put("lower", change.lower())
            .put("upper", change.upper())
            .done();
  }
}
