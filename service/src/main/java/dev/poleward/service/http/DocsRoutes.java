package dev.poleward.service.http;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The page about the API with all that it needs, from the jar: nothing is fetched from elsewhere,
 * and nothing that is not ours can run in it. Open to everybody. What was asked for once is kept, 2
 * MiB in all. Safe for use by many threads.
 */
final class DocsRoutes {

  static final String HTML = "text/html";
  static final String SCRIPT = "text/javascript";
  static final String STYLE = "text/css";

  /** Media types of the files that belong to the page. */
  static final List<String> FILE_FORMS = List.of(SCRIPT, STYLE);

  /** The page alone decides what runs in it; {@code data:} is for the pictures in its styles. */
  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
          + " connect-src 'self'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'";

  private static final String PAGE = "index.html";

  private static final Map<String, String> FILES =
      Map.of(
          "docs.css", STYLE,
          "docs.js", SCRIPT,
          "swagger-ui.css", STYLE,
          "swagger-ui-bundle.js", SCRIPT);

  private final Map<String, Answer> kept = new ConcurrentHashMap<>();

  /** {@code GET /docs}. */
  Answer page(Call call) {
    return unlessKnown(call, kept.computeIfAbsent(PAGE, file -> read(file, HTML)));
  }

  /** {@code GET /docs/{file}}. */
  Answer file(Call call) {
    String type = FILES.get(call.inPath("file"));
    return type == null
        ? call.refused(ProblemKind.NOT_FOUND, "The page has no such file.")
        : unlessKnown(call, kept.computeIfAbsent(call.inPath("file"), file -> read(file, type)));
  }

  private static Answer unlessKnown(Call call, Answer answer) {
    String tag = answer.headers().getOrDefault("ETag", "");
    return EntityTag.matches(call, tag) ? withHeaders(Answer.notModified(), tag) : answer;
  }

  private static Answer read(String file, String type) {
    try (InputStream in = DocsRoutes.class.getResourceAsStream("/docs/" + file)) {
      if (in == null) {
        throw new IllegalStateException("not on the classpath: docs/" + file);
      }
      Answer answer = new Answer(200, type + "; charset=utf-8", in.readAllBytes(), Map.of());
      return withHeaders(answer, EntityTag.ofContent(answer));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot be read: docs/" + file, e);
    }
  }

  private static Answer withHeaders(Answer answer, String tag) {
    return answer
        .with("ETag", tag)
        .with("Cache-Control", "no-cache")
        .with("Vary", "Accept-Encoding")
        .with("Content-Security-Policy", POLICY)
        .with("X-Content-Type-Options", "nosniff")
        .with("Referrer-Policy", "no-referrer");
  }
}
