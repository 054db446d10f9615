package dev.poleward.service.http;

import dev.poleward.service.page.HtmlPages;
import dev.poleward.service.page.PdfPages;
import dev.poleward.service.page.Sheaf;
import dev.poleward.service.render.Studio;
import java.util.Map;

/** Answers with pages. Safe for use by many threads. */
final class Papers {

  private final HtmlPages html;
  private final PdfPages pdf;

  Papers(Studio studio) {
    this.html = new HtmlPages(studio);
    this.pdf = new PdfPages(studio);
  }

  /** A sheaf in the form that the call asks for: HTML or PDF. */
  Answer of(Call call, Sheaf sheaf) {
    if (call.form().equals(HtmlPages.HTML)) {
      return new Answer(200, HtmlPages.HTML + "; charset=utf-8", html.of(sheaf), Map.of())
          .with("Content-Security-Policy", html.policy())
          .with("X-Content-Type-Options", "nosniff")
          .with("Referrer-Policy", "no-referrer");
    }
    return pdf.of(sheaf)
        .map(
            bytes ->
                new Answer(200, PdfPages.PDF, bytes, Map.of("X-Content-Type-Options", "nosniff")))
        .orElseGet(
            () -> call.refused(ProblemKind.NOT_IN_TIME, "Too many pages are being printed."));
  }
}
