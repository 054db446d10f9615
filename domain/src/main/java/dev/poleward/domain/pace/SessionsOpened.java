package dev.poleward.domain.pace;

import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.Knowledge;
import dev.poleward.domain.record.Moment;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * In which session a timing was taken that names none: the one that was opened last before it, on
 * the device's ground where it has one. Looks sessions up when it is first asked; for one thread.
 */
final class SessionsOpened {

  /** So long after its opening a session is taken to be over [C]. */
  static final Duration LASTS = Duration.ofHours(12);

  /** So long after the first run a session may be opened [C]. */
  static final Duration OPENED_LATE = Duration.ofMinutes(15);

  private static final int PAGE = 250;

  private final Facts facts;
  private final Knowledge knowledge;
  private final Instant from;
  private final Instant until;
  private @Nullable List<Fact<SessionOpened>> opened;

  SessionsOpened(Facts facts, Knowledge knowledge, Instant from, Instant until) {
    this.facts = facts;
    this.knowledge = knowledge;
    this.from = from.minus(LASTS);
    this.until = until.plus(OPENED_LATE);
  }

  @Nullable String at(Instant time, @Nullable String ground) {
    List<Fact<SessionOpened>> all = opened == null ? opened = read() : opened;
    for (Fact<SessionOpened> session : all.reversed()) {
      boolean lasted = !session.time().plus(LASTS).isBefore(time);
      boolean begun = !session.time().minus(OPENED_LATE).isAfter(time);
      if (begun && lasted && (ground == null || ground.equals(session.event().ground()))) {
        return session.event().session();
      }
    }
    return null;
  }

  private List<Fact<SessionOpened>> read() {
    List<Fact<SessionOpened>> found = new ArrayList<>();
    Moment after = new Moment(from, "");
    while (true) {
      List<Fact<SessionOpened>> page = facts.sessionsOpened(after, PAGE);
      page.stream()
          .filter(fact -> !fact.time().isAfter(until) && isTheOpening(fact))
          .forEach(found::add);
      if (page.size() < PAGE || page.getLast().time().isAfter(until)) {
        return found;
      }
      after = page.getLast().moment();
    }
  }

  private boolean isTheOpening(Fact<SessionOpened> fact) {
    EntityRef session = new EntityRef(EntityKind.SESSION, fact.event().session());
    List<Fact<SessionOpened>> openings = knowledge.announcements(session, SessionOpened.class);
    return !openings.isEmpty() && openings.getFirst().id().equals(fact.id());
  }
}
