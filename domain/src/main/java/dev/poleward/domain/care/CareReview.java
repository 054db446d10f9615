package dev.poleward.domain.care;

import dev.poleward.domain.event.DogEvent.DogRested;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.Fact;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Looks at a dog before its next session. For one thread. */
public final class CareReview {

  private static final int SESSIONS_USUAL_MAX = 2;

  /** Part of the usual load when it is warm [C]. */
  private static final double WARM = 0.5;

  /** So many degrees below the caution water and shade are worth a word [C]. */
  private static final double HEAT_NOTED_BEFORE = 4;

  /** Weeks of fewer gaps than that a week say nothing of what a dog is used to [C]. */
  private static final int USUAL_GAPS_MIN = 30;

  private final DogRecord dog;
  private final CareQuestion question;
  private final DogLimits own;
  private final CareLimits limits;
  private final LoadSeen load;
  private final List<CareNote> notes = new ArrayList<>();

  private CareReview(DogRecord dog, CareQuestion question, LoadSeen load) {
    this.dog = dog;
    this.question = question;
    this.load = load;
    this.own = DogLimits.of(dog, question.limits(), question.day());
    this.limits = own.limits();
  }

  /**
   * What the dog may be asked for.
   *
   * @param trained what it did
   */
  public static CarePermit of(DogRecord dog, Trained trained, CareQuestion question) {
    return new CareReview(dog, question, LoadSeen.of(trained.reps(), question)).permit(trained);
  }

  private CarePermit permit(Trained trained) {
    noteAge();
    boolean young = own.isAsYoung();
    int allowed = gaps();
    int usedTo = usedTo(allowed);
    EasedBack back = onReturn(trained);
    double inHeat = partInHeat();
    boolean angleWork = mayTurn(trained);
    List<String> cleared = ClearedLimits.inWords(DogLimits.clearance(dog));
    if (!cleared.isEmpty()) {
      notes.add(CareNotes.clearedWithinLimits(cleared));
    }
    if (load.week().sessions() > SESSIONS_USUAL_MAX) {
      notes.add(CareNotes.manySessions(load.week().sessions()));
    }
    if (load.week().poles() > 2 * load.before().poles() && load.before().poles() > 0) {
      notes.add(CareNotes.longerLine(load.before().poles(), load.week().poles()));
    }
    boolean wet = question.conditions().footing() == Conditions.Footing.WET;
    if (wet) {
      notes.add(CareNotes.wetGround());
    }
    boolean stopped = notes.stream().anyMatch(note -> note.severity() == Severity.STOP);
    int gaps = stopped ? 0 : (int) (back.load() * inHeat * usedTo);
    if (usedTo < allowed && !stopped) {
      notes.add(CareNotes.loadGrows(load, gaps, outgrown()));
    }
    notes.sort(Comparator.comparing(CareNote::severity).reversed());
    int sharp = Math.max(0, own.sharpBendsPerSession() - load.today().sharpBends());
    return new CarePermit(
        own.poles(),
        gaps,
        stopped || wet || !angleWork ? 0 : (int) (back.sharpBends() * inHeat * sharp),
        young ? limits.barHeightYoung() : null,
        angleWork,
        load,
        heat(),
        notes);
  }

  /** What is left of the day and of the week. */
  private int gaps() {
    int ofSession = own.gapsPerSession();
    int ofDay = ofSession - load.today().gaps();
    if (ofDay <= 0) {
      notes.add(CareNotes.dayIsFull(load.today().gaps(), ofSession));
    }
    int ofWeek = limits.gapsPerWeek() - load.week().gaps();
    if (ofWeek <= 0) {
      notes.add(CareNotes.weekIsFull(load.week().gaps(), limits.gapsPerWeek()));
    }
    return Math.max(0, Math.min(ofDay, ofWeek));
  }

  /**
   * What is left of what the dog is used to. It may always do as much as a young one: weeks that
   * grow begin with short ones.
   */
  private int usedTo(int allowed) {
    return load.usualGaps() < USUAL_GAPS_MIN
        ? allowed
        : Math.min(allowed, Math.max(limits.gapsYoung(), (int) mostOfWeek() - load.week().gaps()));
  }

  /** Gaps of a week that grows no faster than the club allows. */
  private double mostOfWeek() {
    return load.usualGaps() * (100 + limits.growthPercent()) / 100;
  }

  private Severity outgrown() {
    return load.week().gaps() > mostOfWeek() ? Severity.CAUTION : Severity.NOTE;
  }

  private void noteAge() {
    switch (own.age()) {
      case GROWN -> {}
      case YOUNG -> notes.add(CareNotes.young(limits.ageMonths()));
      case UNKNOWN -> notes.add(CareNotes.ageUnknown());
    }
  }

  /**
   * What a dog may bear after its rest, or after a break that nobody named; notes it while it is
   * resting. Of the two that counts which holds it to less, the rest if they agree.
   */
  private EasedBack onReturn(Trained trained) {
    Fact<DogRested> rest = dog.rested();
    if (rest != null && RestOfDog.isOn(dog, question.day(), question.zone())) {
      notes.add(CareNotes.resting(rest.event().reason(), rest.event().until()));
      return EasedBack.NOT_YET;
    }
    LocalDate over = RestOfDog.over(dog, question.zone());
    EasedBack afterRest = over == null ? EasedBack.WHOLLY : easedSince(over);
    LongBreak pause = LongBreak.latest(trained.reps(), over, question, limits);
    EasedBack afterBreak = pause == null ? EasedBack.WHOLLY : easedSince(pause.back());
    if (pause != null && afterBreak.isHeldMoreThan(afterRest)) {
      notes.add(CareNotes.easingBack(pause, afterBreak));
      return afterBreak;
    }
    if (afterRest.isHeld()) {
      notes.add(CareNotes.easingBack(afterRest));
    }
    return afterRest;
  }

  private EasedBack easedSince(LocalDate back) {
    return EasedBack.since(ChronoUnit.DAYS.between(back, question.day()), limits.easeBackDays());
  }

  private @Nullable Double heat() {
    Double temperature = question.conditions().temperature();
    return temperature == null
        ? null
        : Heat.forDog(temperature, question.conditions(), dog.traits());
  }

  private double partInHeat() {
    Double heat = heat();
    if (heat == null || heat < limits.heatCaution() - HEAT_NOTED_BEFORE) {
      return 1;
    }
    if (heat >= limits.heatStop()) {
      notes.add(CareNotes.tooHot());
      return 0;
    }
    if (heat >= limits.heatCaution()) {
      notes.add(CareNotes.hot());
      return WARM;
    }
    notes.add(CareNotes.warm());
    return 1;
  }

  private boolean mayTurn(Trained trained) {
    Instant cleared = dog.cleared() == null ? null : dog.cleared().time();
    Set<Sign> signs = Signs.of(trained, cleared, question);
    if (!signs.isEmpty()) {
      notes.add(CareNotes.haveItLookedAt(signs));
    }
    return signs.isEmpty();
  }
}
