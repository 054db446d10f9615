package dev.poleward.service.http;

import dev.poleward.service.render.Picture;
import dev.poleward.service.render.Studio;
import java.util.Map;

/** Answers with pictures. Safe for use by many threads. */
final class Pictures {

  static final String SVG = "image/svg+xml";
  static final String PNG = "image/png";

  private final Studio studio;

  Pictures(Studio studio) {
    this.studio = studio;
  }

  /** How wide a picture is asked for, in pixels of CSS. */
  static int width(Parameters parameters) {
    return (int)
        parameters.whole("width", Picture.WIDTH_MIN, Picture.WIDTH_MAX, Picture.WIDTH_DEFAULT);
  }

  /** A picture in the form that the call asks for. */
  Answer painted(Call call, Picture picture) {
    if (call.form().equals(SVG)) {
      return answer(SVG, studio.svg(picture));
    }
    return studio
        .png(picture)
        .map(bytes -> answer(PNG, bytes))
        .orElseGet(
            () -> call.refused(ProblemKind.NOT_IN_TIME, "Too many pictures are being painted."));
  }

  private static Answer answer(String type, byte[] bytes) {
    return new Answer(200, type, bytes, Map.of("X-Content-Type-Options", "nosniff"));
  }
}
