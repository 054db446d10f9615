package dev.poleward.service.http;

import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.View;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What reads are asked for by their query; a query with faults is refused with all of them. */
final class Asked {

  private static final Set<String> VIEW = Set.of("asOf", "knownAt");
  private static final Set<String> LIST = Set.of("asOf", "knownAt", "limit", "cursor");

  private Asked() {}

  /**
   * A page of a list that goes by (time, id).
   *
   * @param limit most items of the page
   * @param after the last item of the page before; null at the beginning
   */
  record ByMoment(View view, int limit, @Nullable Moment after) {}

  /**
   * A page of a list that goes by id.
   *
   * @param limit most items of the page
   * @param after the last item of the page before; empty at the beginning
   */
  record ById(View view, int limit, String after) {}

  /** The view that is asked for, as far as it can be read. */
  static View viewOf(Call call) {
    return new Parameters(call, VIEW).view();
  }

  /** Answers as {@code then} does for the view that is asked for. */
  static Answer inView(Call call, Function<View, Answer> then) {
    Parameters parameters = new Parameters(call, VIEW);
    View view = parameters.view();
    return answered(call, parameters, view, then);
  }

  /** Answers as {@code then} does for a page of a list that goes by (time, id). */
  static Answer byMoment(Call call, Function<ByMoment, Answer> then) {
    Parameters parameters = new Parameters(call, LIST);
    ByMoment asked =
        new ByMoment(parameters.view(), parameters.limit(), Cursors.moment(parameters));
    return answered(call, parameters, asked, then);
  }

  /** Answers as {@code then} does for a page of a list that goes by id. */
  static Answer byId(Call call, Function<ById, Answer> then) {
    Parameters parameters = new Parameters(call, LIST);
    ById asked = new ById(parameters.view(), parameters.limit(), Cursors.id(parameters));
    return answered(call, parameters, asked, then);
  }

  private static <T> Answer answered(
      Call call, Parameters parameters, T asked, Function<T, Answer> then) {
    return parameters.problem().map(call::refused).orElseGet(() -> then.apply(asked));
  }
}
