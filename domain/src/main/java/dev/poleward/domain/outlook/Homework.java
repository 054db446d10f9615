package dev.poleward.domain.outlook;

import dev.poleward.domain.event.AimEvent.HomeworkSet;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Registry;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;

/**
 * Homework, and what was done of it from when it was set until the end of the day it was due.
 *
 * @param set the event
 * @param state how it stands
 * @param drills in the order in which they were set
 */
public record Homework(Fact<HomeworkSet> set, State state, List<Done> drills) {

  /** How homework stands. */
  public enum State {
    /** All of it was done. */
    DONE,
    /** Some is left, and the day is not over. */
    OPEN,
    /** Some was left when the day was over. */
    OVERDUE
  }

  /**
   * One drill of it.
   *
   * @param asked as it was set
   * @param wanted how many reps; one where nothing is said
   * @param reps how many were run that fit, void ones left out
   * @param clean how many of them were clean
   */
  public record Done(Map<String, Object> asked, int wanted, int reps, int clean) {

    /** Whether as many were run as were wanted, clean or not. */
    public boolean isDone() {
      return reps >= wanted;
    }
  }

  /** Keeps the drills from changing. */
  public Homework {
    drills = List.copyOf(drills);
  }

  /**
   * All homework of a dog, what was set last first.
   *
   * @param reps of the dog, ascending by (time, id)
   * @param today the club's day
   */
  public static List<Homework> of(
      String dog, Registry registry, List<PlacedRep> reps, LocalDate today, ZoneId zone) {
    return registry.aims(dog, HomeworkSet.class).reversed().stream()
        .map(set -> of(set, reps, today, zone))
        .toList();
  }

  private static Homework of(
      Fact<HomeworkSet> set, List<PlacedRep> reps, LocalDate today, ZoneId zone) {
    Instant end = set.event().due().plusDays(1).atStartOfDay(zone).toInstant();
    List<PlacedRep> since =
        reps.stream()
            .filter(rep -> !rep.moment().time().isBefore(set.time()))
            .filter(rep -> rep.moment().time().isBefore(end))
            .filter(rep -> rep.outcome() != Outcome.VOID)
            .toList();
    List<Done> drills = set.event().drills().stream().map(drill -> done(drill, since)).toList();
    return new Homework(set, state(drills, set.event().due(), today), drills);
  }

  private static State state(List<Done> drills, LocalDate due, LocalDate today) {
    if (drills.stream().allMatch(Done::isDone)) {
      return State.DONE;
    }
    return due.isBefore(today) ? State.OVERDUE : State.OPEN;
  }

  private static Done done(Map<String, Object> drill, List<PlacedRep> since) {
    AskedDrill asked = AskedDrill.of(drill);
    List<PlacedRep> fitting = since.stream().filter(asked::fits).toList();
    int clean = (int) fitting.stream().filter(rep -> rep.outcome() == Outcome.CLEAN).count();
    return new Done(drill, asked.reps(), fitting.size(), clean);
  }
}
