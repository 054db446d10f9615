package dev.poleward.domain.event;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What concerns the club as a whole: its registration, its settings, its keys, forgetting. */
public sealed interface ClubEvent extends TrainingEvent {

  /**
   * A club began to keep its record here.
   *
   * @param timeZone IANA name; a local day is a day there
   */
  record ClubRegistered(
      String club,
      String name,
      String timeZone,
      @Nullable Map<String, Object> careLimits,
      @Nullable Map<String, Object> defaults)
      implements ClubEvent {}

  /** Settings changed; those that are absent stay as they were. */
  record ClubSettingsChanged(
      @Nullable String name,
      @Nullable String timeZone,
      @Nullable Map<String, Object> careLimits,
      @Nullable Map<String, Object> defaults)
      implements ClubEvent {}

  /**
   * An access key was issued.
   *
   * @param key the key's id, part of the key itself
   * @param scopes what it may do
   * @param dogs the only dogs it may see and write, when narrowed
   * @param hash SHA-256 of the key's secret, {@code sha256:} and hexadecimal digits; the secret
   *     itself is nowhere kept
   */
  record AccessKeyIssued(
      String key,
      List<String> scopes,
      @Nullable List<String> dogs,
      @Nullable String label,
      String hash)
      implements ClubEvent {}

  /** An access key stopped working, for good. */
  record AccessKeyRevoked(String key) implements ClubEvent {}

  /** A person's key was destroyed: what was sealed under it can never be read again. */
  record PersonForgotten(String handler) implements ClubEvent {}
}
