package dev.poleward.service.http;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Duration;

/**
 * Events that this node answered 202: durable, not applied yet. Kept for an hour at most, 100,000
 * at most. Safe for use by many threads.
 */
final class PendingEvents {

  private static final int KEPT_MAX = 100_000;
  private static final Duration KEPT_FOR = Duration.ofHours(1);

  private record Named(String club, String event) {}

  private final Cache<Named, Boolean> pending =
      Caffeine.newBuilder().maximumSize(KEPT_MAX).expireAfterWrite(KEPT_FOR).build();

  void add(String club, String event) {
    pending.put(new Named(club, event), true);
  }

  boolean contains(String club, String event) {
    return pending.getIfPresent(new Named(club, event)) != null;
  }
}
