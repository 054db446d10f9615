package dev.poleward.domain.history;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.CrossAt;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.JumpTurn;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.event.RepEvent.RepAmended;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.RepField;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardDelivery;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import dev.poleward.domain.event.SessionEvent.SetupChanged;
import dev.poleward.domain.event.Stride;
import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.ClockPosition;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reps, their amendments and setups, as the contract allows them. */
final class GeneratedRep {

  /** All but the note: it is no part of an event's open data. */
  private static final Set<RepField> CLEARABLE = EnumSet.complementOf(EnumSet.of(RepField.NOTE));

  /** Some said by way of radians, or by a device that never says nought. */
  private static final List<Double> ANGLES =
      List.of(
          0.0, 15.0, 45.0, 75.0, -30.0, -60.0, -59.99999999999999, 45.0000001, 74.9999999, 1e-170);

  private final Pick pick;

  GeneratedRep(Pick pick) {
    this.pick = pick;
  }

  RepLogged logged() {
    return new RepLogged(
        pick.of(GeneratedHistory.REPS),
        pick.of(GeneratedHistory.SESSIONS),
        pick.of(GeneratedHistory.DOGS),
        pick.of(Manoeuvre.class),
        pick.of(Outcome.class),
        pick.onceIn(3) ? RepDetails.NONE : details(4));
  }

  /** One of many of one dog, from a few angles, missed the more often the sharper. */
  RepLogged drilled() {
    double degrees = pick.of(ANGLES);
    return new RepLogged(
        pick.of(GeneratedHistory.DRILLED_REPS),
        GeneratedHistory.SESSIONS.getFirst(),
        GeneratedHistory.DOGS.getFirst(),
        Manoeuvre.ALONGSIDE,
        pick.below(90) < Math.abs(degrees) ? Outcome.MISSED_ENTRY : Outcome.CLEAN,
        startedFrom(degrees));
  }

  private static RepDetails startedFrom(double degrees) {
    Approach approach = new Approach(new EntryAngle(degrees), null);
    return new RepDetails(
        null, null, null, null, null, null, approach, null, null, null, null, null, null, null,
        null, null);
  }

  RepAmended amended() {
    Set<RepField> cleared = cleared();
    return new RepAmended(
        pick.of(GeneratedHistory.REPS),
        pick.sometimes(3, () -> pick.of(GeneratedHistory.SESSIONS)),
        pick.sometimes(3, () -> pick.of(GeneratedHistory.DOGS)),
        pick.sometimesOf(4, Manoeuvre.class),
        // Something changes, or the contract would refuse it.
        cleared.isEmpty() ? pick.of(Outcome.class) : null,
        cleared.isEmpty() && pick.onceIn(2) ? details(5) : RepDetails.NONE,
        cleared);
  }

  private Set<RepField> cleared() {
    EnumSet<RepField> cleared = EnumSet.noneOf(RepField.class);
    if (pick.onceIn(3)) {
      List<RepField> fields = List.copyOf(CLEARABLE);
      do {
        cleared.add(fields.get(pick.below(fields.size())));
      } while (pick.onceIn(2));
    }
    return cleared;
  }

  SetupChanged setupChanged() {
    return new SetupChanged(
        pick.of(GeneratedHistory.SESSIONS),
        setup(),
        pick.sometimes(2, () -> pick.of(GeneratedHistory.POLE_SETS)));
  }

  private RepDetails details(int times) {
    DogSide dogSide = pick.sometimesOf(2, DogSide.class);
    BackChainStep step = pick.sometimesOf(times, BackChainStep.class);
    JumpTurn turn = pick.sometimesOf(times, JumpTurn.class);
    Double lateralDistance = pick.sometimes(times, () -> pick.below(20) / 2.0);
    String handlerAt = pick.sometimes(times, () -> pick.of(List.of("start", "far end")));
    CrossAt crossAt = pick.sometimesOf(times, CrossAt.class);
    Approach approach = pick.sometimes(times, this::approach);
    Setup setup = pick.sometimes(times, this::setup);
    // Beyond the poles of its own setup a fault would be refused; beyond the session's it may be.
    int polesMax = setup == null ? 12 : setup.poles();
    return new RepDetails(
        dogSide,
        step,
        turn,
        lateralDistance,
        handlerAt,
        crossAt,
        approach,
        setup,
        pick.sometimes(2, () -> pick.of(GeneratedHistory.POLE_SETS)),
        pick.sometimes(times, () -> Math.min(1 + pick.below(12), polesMax)),
        pick.sometimes(times, this::rewards),
        pick.sometimesOf(times, Help.class),
        pick.sometimes(2 * times, () -> pick.of(GeneratedHistory.HANDLERS)),
        pick.sometimes(2 * times, () -> pick.of(GeneratedHistory.HANDLERS)),
        pick.sometimes(times, () -> 1 + pick.below(3)),
        pick.sometimesOf(times, Stride.class));
  }

  private List<Reward> rewards() {
    Reward reward =
        new Reward(
            pick.of(RewardKind.class),
            pick.of(RewardPlace.class),
            pick.sometimes(2, () -> pick.below(4)),
            pick.sometimesOf(2, RewardDelivery.class));
    return pick.onceIn(3) ? List.of() : List.of(reward);
  }

  private Setup setup() {
    LeadIn leadIn = pick.of(LeadIn.class);
    @Nullable Approach approach = leadIn == LeadIn.NONE && pick.onceIn(2) ? null : approach();
    return new Setup(
        pick.of(List.of(3, 4, 6, 12)),
        pick.of(List.of(0.6, 0.6096)),
        leadIn,
        pick.sometimes(2, () -> 4.5 + pick.below(6)),
        approach,
        leadIn == LeadIn.JUMP ? 0.3 : null,
        leadIn == LeadIn.JUMP ? pick.sometimes(3, () -> 15.0 * pick.below(5)) : null,
        pick.sometimes(6, () -> List.of("gate")));
  }

  private Approach approach() {
    int halfHours = pick.below(23) - 11;
    EntryAngle angle = new EntryAngle(15 * halfHours);
    ClockPosition clock = angle.clock().orElseThrow();
    return switch (pick.below(4)) {
      case 0 -> new Approach(angle, clock);
      case 1 -> new Approach(null, clock);
      case 2 -> new Approach(angle, null);
      default -> new Approach(new EntryAngle(pick.below(359) - 179.0), null);
    };
  }
}
