package dev.poleward.service.access;

import dev.poleward.domain.event.ClubEvent.AccessKeyIssued;
import dev.poleward.domain.event.ClubEvent.AccessKeyRevoked;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Precedence;
import dev.poleward.service.projection.ClubReader;
import dev.poleward.service.projection.Reading;
import dev.poleward.service.projection.Remembered;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Tells whose access key a request carries, and makes new keys. Safe for use by many threads.
 *
 * <p>Whose a key is, is remembered at the club's position alone: the event that revokes it moves
 * that, and the key stops working. Wrong keys are looked up each time, so that time does not tell
 * them from unknown ones.
 */
public final class AccessKeys {

  private static final long IDENTITY_BYTES_MAX = 1L << 20;
  private static final int BYTES_OF_IDENTITY = 512;
  private static final int BYTES_OF_DOG = 128;

  private record Question(String keyId, String secretHash) {}

  private final ClubReader clubs;
  private final HostKey hostKey;
  private final Randomness randomness;
  private final Duration catchUpMax;

  private final Remembered<Question, ClubIdentity> identities =
      new Remembered<>(IDENTITY_BYTES_MAX, (_, identity) -> bytes(identity));

  /** Compared with where there is no key, so that an unknown key takes as long as a wrong one. */
  private final String nobodysHash;

  /**
   * Keys as the journal has them.
   *
   * @param catchUpMax longest wait to learn whether a key that is not known here is known elsewhere
   */
  public AccessKeys(ClubReader clubs, HostKey hostKey, Randomness randomness, Duration catchUpMax) {
    this.clubs = clubs;
    this.hostKey = hostKey;
    this.randomness = randomness;
    this.catchUpMax = catchUpMax;
    this.nobodysHash = SecretHash.of(AccessKeyText.drawn("-", "-", randomness).secret());
  }

  /**
   * Whose key that is. A key that does not open anything as far as this node has read is looked up
   * once more with all that was recorded before: a key works through every node once its issuing is
   * answered. A key revoked through another node works here until this node has applied the
   * revocation, unless the caller catches up with the club first.
   *
   * @param bearer what follows {@code Bearer} in the request
   */
  public Authentication authenticate(String bearer) {
    Optional<AccessKeyText> parsed = AccessKeyText.parse(bearer);
    if (parsed.isEmpty()) {
      return new Authentication.Malformed();
    }
    AccessKeyText text = parsed.get();
    if (hostKey.is(text)) {
      return new HostIdentity();
    }
    Optional<ClubIdentity> known = lookUp(text);
    if (known.isEmpty()) {
      if (!clubs.catchUp(text.club(), catchUpMax)) {
        return new Authentication.Undecided();
      }
      known = lookUp(text);
    }
    return known.isPresent() ? known.get() : new Authentication.Unknown();
  }

  private Optional<ClubIdentity> lookUp(AccessKeyText text) {
    Question question = new Question(text.keyId(), SecretHash.of(text.secret()));
    try (Reading reading = clubs.open(text.club())) {
      return identities
          .known(reading, question, "")
          .or(
              () ->
                  lookUp(text, reading)
                      .map(identity -> identities.kept(reading, question, "", identity)));
    }
  }

  private Optional<ClubIdentity> lookUp(AccessKeyText text, Reading reading) {
    Optional<AccessKeyIssued> issued =
        working(reading.facts().about(new EntityRef(EntityKind.KEY, text.keyId())));
    boolean matches =
        SecretHash.matches(text.secret(), issued.map(AccessKeyIssued::hash).orElse(nobodysHash));
    return issued.filter(_ -> matches).map(key -> identity(text.club(), key));
  }

  private static long bytes(ClubIdentity identity) {
    return BYTES_OF_IDENTITY + (long) BYTES_OF_DOG * identity.dogs().map(Set::size).orElse(0);
  }

  /** The key that stands, unless it was revoked. Neither event can be withdrawn. */
  private static Optional<AccessKeyIssued> working(List<Fact<?>> facts) {
    List<Fact<AccessKeyIssued>> issued = new ArrayList<>();
    boolean revoked = false;
    for (Fact<?> fact : facts) {
      Fact<AccessKeyIssued> key = fact.as(AccessKeyIssued.class);
      if (key != null) {
        issued.add(key);
      }
      revoked |= fact.event() instanceof AccessKeyRevoked;
    }
    return revoked
        ? Optional.empty()
        : Precedence.standingFirst(issued).stream().findFirst().map(Fact::event);
  }

  private static ClubIdentity identity(String club, AccessKeyIssued key) {
    return new ClubIdentity(
        club,
        key.key(),
        KeyRequest.scopesOf(key),
        Optional.ofNullable(key.dogs()).map(Set::copyOf));
  }

  /**
   * Makes a key for a club. It is the caller's to see that no key of that id is known yet: of two
   * the least (time, id) stands.
   */
  public Issuance issue(String club, KeyRequest request) {
    if (request.scopes().isEmpty()) {
      return new Issuance.Refused("scopes", "A key must open something.");
    }
    if (request.scopes().contains(Scope.HOST)) {
      return new Issuance.Refused("scopes", "Only the host key opens every club.");
    }
    if (request.dogs() != null && request.scopes().contains(Scope.CLUB_MANAGE)) {
      return new Issuance.Refused(
          "dogs", "A key that may manage the club cannot be narrowed to some dogs.");
    }
    if (request.key() != null && !AccessKeyText.isKeyId(request.key())) {
      return new Issuance.Refused(
          "key", "A key's id is 1 to 64 letters, digits, dots, tildes and hyphens.");
    }
    String key = request.key() != null ? request.key() : AccessKeyText.drawnKeyId(randomness);
    AccessKeyText text = AccessKeyText.drawn(club, key, randomness);
    AccessKeyIssued event =
        new AccessKeyIssued(
            key,
            request.scopeNames(),
            request.sortedDogs(),
            request.label(),
            SecretHash.of(text.secret()));
    return new Issuance.Issued(event, text);
  }
}
