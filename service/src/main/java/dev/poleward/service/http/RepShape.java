package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.service.codec.RepCodec;
import dev.poleward.service.codec.Writing;
import org.jspecify.annotations.Nullable;

/** Placed reps as the contract shows them. Immutable; safe for use by many threads. */
final class RepShape {

  ObjectNode of(PersonalView personal, PlacedRep rep) {
    Writing out =
        new Writing()
            .put("event", rep.moment().id())
            .put("rep", rep.rep())
            .put("session", rep.session())
            .put("dog", rep.dog())
            .putPrinted("time", rep.moment().time());
    if (rep.angle() != null) {
      out.put("entrySide", rep.angle().side())
          .put("angle", rep.angle().degrees())
          .putPrinted("clock", rep.angle().clock().orElse(null));
    }
    putSetup(out, rep.setup());
    out.put("setup", rep.setupEvent())
        .put("poleSet", rep.poleSet())
        .put("manoeuvre", rep.manoeuvre())
        .put("outcome", rep.outcome());
    RepCodec.writeHandling(out, rep.details());
    return out.put("note", note(personal, rep))
        .putTexts("amendedBy", rep.amendedBy())
        .putTexts("duplicates", rep.duplicates())
        .done();
  }

  private static void putSetup(Writing out, @Nullable Setup setup) {
    if (setup != null) {
      out.put("poles", setup.poles())
          .put("spacing", setup.spacing())
          .put("leadIn", setup.leadIn())
          .put("leadInDistance", setup.leadInDistance())
          .put("jumpHeight", setup.jumpHeight())
          .put("jumpFacing", setup.jumpFacing())
          .putTexts("aids", setup.aids());
    }
  }

  private static @Nullable String note(PersonalView personal, PlacedRep rep) {
    if (rep.note() == null) {
      return null;
    }
    JsonNode note = personal.members(rep.note().event(), rep.note().sealed()).get("note");
    return note == null ? null : note.textValue();
  }
}
