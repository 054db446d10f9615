package dev.poleward.service.http;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.jetty.http.QuotedQualityCSV;

/** Chooses the form of an answer by the Accept header (RFC 9110, 12.5.1). */
final class Form {

  private Form() {}

  /**
   * The form that fits best: of the offered ones the first that the most wanted range covers.
   *
   * @param offered media types, the usual one first
   */
  static Optional<String> choose(Call call, List<String> offered) {
    String accept = call.header("Accept").orElse("");
    if (accept.isBlank()) {
      return Optional.of(offered.getFirst());
    }
    for (String range : wanted(accept)) {
      for (String form : offered) {
        if (covers(range, form)) {
          return Optional.of(form);
        }
      }
    }
    return Optional.empty();
  }

  /** The ranges, the most wanted first; none when the header cannot be read. */
  private static List<String> wanted(String accept) {
    QuotedQualityCSV wanted = new QuotedQualityCSV();
    try {
      wanted.addValue(accept);
    } catch (IllegalArgumentException e) {
      return List.of();
    }
    return wanted.getValues();
  }

  private static boolean covers(String wanted, String form) {
    int parameters = wanted.indexOf(';');
    String range =
        (parameters < 0 ? wanted : wanted.substring(0, parameters)).trim().toLowerCase(Locale.ROOT);
    return range.equals("*/*")
        || range.equals(form)
        || (range.endsWith("/*") && form.startsWith(range.substring(0, range.length() - 1)));
  }
}
