package dev.poleward.service.access;

import dev.poleward.domain.event.ClubEvent.AccessKeyIssued;

/** What became of a wish for an access key. */
public sealed interface Issuance {

  /**
   * A key, good as soon as {@code event} is recorded.
   *
   * @param text the key itself: to be shown once, kept nowhere
   */
  record Issued(AccessKeyIssued event, AccessKeyText text) implements Issuance {}

  /**
   * No such key can be.
   *
   * @param member the member of the wish that stands in the way
   * @param why in a sentence
   */
  record Refused(String member, String why) implements Issuance {}
}
