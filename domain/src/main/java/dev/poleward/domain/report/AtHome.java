package dev.poleward.domain.report;

import dev.poleward.domain.care.CarePermit;
import dev.poleward.domain.care.CareQuestion;
import dev.poleward.domain.care.CareReview;
import dev.poleward.domain.care.RestOfDog;
import dev.poleward.domain.care.Trained;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.ExpectedClean;
import dev.poleward.domain.judgement.NextRung;
import dev.poleward.domain.judgement.NextRungs;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.outlook.Homework;
import dev.poleward.domain.planning.Limits;
import dev.poleward.domain.record.DogRecord;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** What a dog is to practise at home after the last day of a report. */
public sealed interface AtHome {

  /** So many rungs that slip or are due are proposed. */
  int REFRESHERS_MAX = 3;

  /** So many rungs that are next are proposed. */
  int NEXT_MAX = 2;

  /** It rests: no poles. */
  record Rest() implements AtHome {}

  /**
   * What the trainer set, as far as it is not done and its day not over.
   *
   * @param homework what was set last first, never empty
   */
  record Homeworks(List<Homework> homework) implements AtHome {

    /** Keeps the list from changing. */
    public Homeworks {
      homework = List.copyOf(homework);
    }
  }

  /**
   * Nobody set anything: what follows from the record, within what age and health allow.
   *
   * @param refresh what slips, then what is due
   * @param next what is to be learned, or something easier where that went wrong too often
   * @param heldBack rungs that would have had their turn, but for age, health or a clearance
   */
  record Proposed(List<NextRung> refresh, List<NextRung> next, int heldBack) implements AtHome {

    /** Keeps the lists from changing. */
    public Proposed {
      refresh = List.copyOf(refresh);
      next = List.copyOf(next);
    }
  }

  /**
   * What is to be done.
   *
   * @param homework all of it, as it stood on the last day
   * @param permit what the dog may be asked for on the last day
   */
  static AtHome of(
      DogRecord dog,
      List<Homework> homework,
      DogStanding standing,
      CarePermit permit,
      CareQuestion care,
      Supplier<ExpectedClean> expected) {
    if (RestOfDog.isOn(dog, care.day(), care.zone())) {
      return new Rest();
    }
    List<Homework> open =
        homework.stream().filter(each -> each.state() == Homework.State.OPEN).toList();
    if (!open.isEmpty()) {
      return new Homeworks(open);
    }
    List<NextRung> all =
        NextRungs.of(standing, expected.get()).stream()
            .filter(next -> next.why() != NextRung.Reason.PROBE)
            .toList();
    Limits health = health(dog, permit, care);
    List<NextRung> allowed = all.stream().filter(next -> isAllowed(next, health)).toList();
    return new Proposed(
        of(allowed, EnumSet.of(NextRung.Reason.SLIPPING, NextRung.Reason.DUE))
            .limit(REFRESHERS_MAX)
            .toList(),
        of(allowed, EnumSet.of(NextRung.Reason.EASIER, NextRung.Reason.FRONTIER))
            .limit(NEXT_MAX)
            .toList(),
        all.size() - allowed.size());
  }

  private static Stream<NextRung> of(List<NextRung> all, Set<NextRung.Reason> reasons) {
    return all.stream().filter(next -> reasons.contains(next.why()));
  }

  /** What age and health allow. The load of the last day is another matter: it passes. */
  private static Limits health(DogRecord dog, CarePermit permit, CareQuestion care) {
    CarePermit unloaded = CareReview.of(dog, Trained.NOTHING, care);
    Set<EntrySide> sides =
        permit.angleWork() ? EnumSet.allOf(EntrySide.class) : EnumSet.noneOf(EntrySide.class);
    return Limits.of(1, unloaded, sides, false);
  }

  private static boolean isAllowed(NextRung next, Limits health) {
    return next.standing().pool().drills().stream().anyMatch(health::allow);
  }
}
