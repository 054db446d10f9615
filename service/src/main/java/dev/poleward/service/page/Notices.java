package dev.poleward.service.page;

import dev.poleward.domain.care.CareNote;
import java.util.Locale;

/** What care has to say, as it stands on a page. */
public final class Notices {

  private Notices() {}

  /** A note. */
  public static Block.Notice of(CareNote note) {
    return new Block.Notice(
        note.severity().name().toLowerCase(Locale.ROOT), note.text(), note.source());
  }
}
