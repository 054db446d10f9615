package dev.poleward.domain.pace;

import dev.poleward.domain.event.Manoeuvre;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A run whose time counts: clean, not helped, of known poles, and not faster than a dog can be.
 *
 * @param gaps seconds in each gap; null where they were not told
 */
record CleanRun(
    RunKind kind, Manoeuvre manoeuvre, Instant at, double seconds, @Nullable List<Double> gaps) {}
