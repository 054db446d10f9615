package dev.poleward.domain.report;

import dev.poleward.domain.event.SessionEvent.SessionAttended;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.record.DaySpan;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Membership;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.SessionRecord;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A session of a class.
 *
 * @param session its id
 * @param opened when it was opened
 * @param day the club's day of that
 * @param members who were members on that day, ascending by dog
 * @param visitors other dogs that were there, ascending by dog
 * @param reps of all of them
 * @param setups what stood, in the order in which it was set up
 */
public record ClassSession(
    String session,
    Instant opened,
    LocalDate day,
    List<Attendance> members,
    List<Attendance> visitors,
    List<PlacedRep> reps,
    List<StoodSetup> setups) {

  private static final int PAGE = 500;

  /** Keeps the lists from changing. */
  public ClassSession {
    members = List.copyOf(members);
    visitors = List.copyOf(visitors);
    reps = List.copyOf(reps);
    setups = List.copyOf(setups);
  }

  /** How it stood with a dog; empty when it was neither a member nor there. */
  public Optional<Attendance> of(String dog) {
    return Stream.concat(members.stream(), visitors.stream())
        .filter(each -> each.dog().equals(dog))
        .findFirst();
  }

  /** So many members, by whether they were there. */
  public int count(Presence presence) {
    return (int) members.stream().filter(each -> each.presence() == presence).count();
  }

  /** How often something else was set up where something stood. */
  public int changes() {
    return setups.size() - (int) setups.stream().map(StoodSetup::poleSet).distinct().count();
  }

  /** The sessions of a class that were opened within the span, ascending by (time, id). */
  static List<ClassSession> of(
      String group, ReportSources sources, Map<String, List<Membership>> memberships) {
    List<ClassSession> sessions = new ArrayList<>();
    DaySpan span = sources.span();
    Moment last = new Moment(span.begin(), "");
    while (true) {
      List<Fact<SessionOpened>> openings = sources.facts().sessionsOpened(last, PAGE);
      for (Fact<SessionOpened> opening : openings) {
        if (!span.has(opening.time())) {
          return sessions;
        }
        if (group.equals(opening.event().group())) {
          sources
              .registry()
              .sessionOpenedBy(opening)
              .map(session -> of(opening, session, sources, memberships))
              .ifPresent(sessions::add);
        }
        last = opening.moment();
      }
      if (openings.size() < PAGE) {
        return sessions;
      }
    }
  }

  private static ClassSession of(
      Fact<SessionOpened> opening,
      SessionRecord session,
      ReportSources sources,
      Map<String, List<Membership>> memberships) {
    List<PlacedRep> reps = sources.placement().inSession(opening.event().session());
    LocalDate day = sources.span().day(opening.time());
    Instant dayEnds = day.plusDays(1).atStartOfDay(sources.span().zone()).toInstant();
    TreeSet<String> members = new TreeSet<>();
    memberships.forEach(
        (dog, all) -> {
          if (all.stream().anyMatch(each -> each.overlaps(opening.time(), dayEnds))) {
            members.add(dog);
          }
        });
    List<Attendance> ofMembers = new ArrayList<>();
    List<Attendance> ofVisitors = new ArrayList<>();
    seen(session, reps, sources, members)
        .forEach(
            (dog, attendance) -> {
              if (members.contains(dog)) {
                ofMembers.add(attendance);
              } else if (attendance.presence() == Presence.PRESENT) {
                ofVisitors.add(attendance);
              }
            });
    return new ClassSession(
        opening.event().session(),
        opening.time(),
        day,
        ofMembers,
        ofVisitors,
        reps,
        StoodSetup.of(session, reps));
  }

  /** All dogs that were members, were noted or have reps. */
  private static SortedMap<String, Attendance> seen(
      SessionRecord session, List<PlacedRep> reps, ReportSources sources, TreeSet<String> members) {
    SortedMap<String, Boolean> noted = new TreeMap<>();
    for (Fact<SessionAttended> fact : session.attendance()) {
      noted.put(sources.placement().identity().of(fact.event().dog()), fact.event().present());
    }
    SortedMap<String, Integer> repsOf = new TreeMap<>();
    reps.forEach(rep -> repsOf.merge(rep.dog(), 1, Integer::sum));
    TreeSet<String> dogs = new TreeSet<>(members);
    dogs.addAll(noted.keySet());
    dogs.addAll(repsOf.keySet());
    SortedMap<String, Attendance> seen = new TreeMap<>();
    for (String dog : dogs) {
      seen.put(dog, Attendance.of(dog, noted.get(dog), repsOf.getOrDefault(dog, 0)));
    }
    return seen;
  }
}
