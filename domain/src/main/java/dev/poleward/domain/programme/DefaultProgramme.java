package dev.poleward.domain.programme;

import dev.poleward.domain.programme.DocumentReading.Faulty;
import dev.poleward.domain.programme.DocumentReading.Sound;
import dev.poleward.domain.record.EntityRef;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * The programme of dogs that have none: a neutral grid over entry angle, lead-in and handling, from
 * three poles to twelve. A document like any other, in the resource {@code default-programme.json};
 * its numbers are common practice [C].
 */
public final class DefaultProgramme {

  /** Its id, which is no club's to publish under. */
  public static final String ID = EntityRef.DEFAULT_PROGRAMME.id();

  private static final String RESOURCE = "default-programme.json";
  private static final Map<String, Object> DOCUMENT = DocumentText.read(text());
  private static final Programme PROGRAMME = sound(DOCUMENT);

  private DefaultProgramme() {}

  /** The document, as it could be published. */
  public static Map<String, Object> document() {
    return DOCUMENT;
  }

  /** What the document says. */
  public static Programme programme() {
    return PROGRAMME;
  }

  private static Programme sound(Map<String, Object> document) {
    return switch (ProgrammeDocument.read(document)) {
      case Sound(Programme programme) when programme.id().equals(ID) -> programme;
      case Sound(Programme programme) ->
          throw new IllegalStateException(RESOURCE + " is called " + programme.id());
      case Faulty faulty -> throw new IllegalStateException(RESOURCE + ": " + faulty.faults());
    };
  }

  private static String text() {
    try (InputStream in = DefaultProgramme.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException("no resource " + RESOURCE);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
