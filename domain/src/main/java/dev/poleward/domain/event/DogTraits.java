package dev.poleward.domain.event;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What may be known of a dog besides its call name; whatever is absent is unknown.
 *
 * @param withersHeight metres
 * @param handlers ids of those who handle it
 * @param guest whether it trains here without being of the club
 */
public record DogTraits(
    @Nullable LocalDate born,
    @Nullable Double withersHeight,
    @Nullable HeatRisk heatRisk,
    @Nullable List<String> handlers,
    @Nullable Boolean guest) {

  /** Keeps the handlers from changing. */
  public DogTraits {
    handlers = handlers == null ? null : List.copyOf(handlers);
  }
}
