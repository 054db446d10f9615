package dev.poleward.domain.record;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.event.RepEvent.RepAmended;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.RepField;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A rep after its amendments, field by field.
 *
 * @param amendedBy ids of the amendments that count, ascending by (time, id)
 */
record CorrectedRep(
    String session,
    String dog,
    Manoeuvre manoeuvre,
    Outcome outcome,
    RepDetails details,
    @Nullable SealedNote note,
    List<String> amendedBy) {

  /** The rep as it was logged. */
  static CorrectedRep of(Fact<RepLogged> fact) {
    RepLogged logged = fact.event();
    return new CorrectedRep(
        logged.session(),
        logged.dog(),
        logged.manoeuvre(),
        logged.outcome(),
        logged.details(),
        fact.sealed() == null ? null : SealedNote.of(fact, fact.sealed()),
        List.of());
  }

  /** The rep as this amendment leaves it; to be called in ascending order. */
  CorrectedRep amendedBy(Fact<RepAmended> fact) {
    RepAmended amended = fact.event();
    List<String> ids = new ArrayList<>(amendedBy);
    ids.add(fact.id());
    return new CorrectedRep(
        or(amended.session(), session),
        or(amended.dog(), dog),
        or(amended.manoeuvre(), manoeuvre),
        or(amended.outcome(), outcome),
        corrected(amended.details(), amended.cleared()),
        amendedNote(fact),
        List.copyOf(ids));
  }

  private @Nullable SealedNote amendedNote(Fact<RepAmended> fact) {
    if (fact.sealed() != null) {
      return SealedNote.of(fact, fact.sealed());
    }
    return fact.event().cleared().contains(RepField.NOTE) ? null : note;
  }

  private static <T> T or(@Nullable T changed, T before) {
    return changed != null ? changed : before;
  }

  private RepDetails corrected(RepDetails changed, Set<RepField> cleared) {
    Amending amending = new Amending(cleared);
    return new RepDetails(
        amending.of(RepField.DOG_SIDE, changed.dogSide(), details.dogSide()),
        amending.of(RepField.BACK_CHAIN_STEP, changed.backChainStep(), details.backChainStep()),
        amending.of(RepField.JUMP_TURN, changed.jumpTurn(), details.jumpTurn()),
        amending.of(
            RepField.LATERAL_DISTANCE, changed.lateralDistance(), details.lateralDistance()),
        amending.of(RepField.HANDLER_AT, changed.handlerAt(), details.handlerAt()),
        amending.of(RepField.CROSS_AT, changed.crossAt(), details.crossAt()),
        amending.of(
            cleared.contains(RepField.CLOCK) ? RepField.CLOCK : RepField.ANGLE,
            changed.approach(),
            details.approach()),
        amending.of(RepField.SETUP, changed.setup(), details.setup()),
        amending.of(RepField.POLE_SET, changed.poleSet(), details.poleSet()),
        amending.of(RepField.AT_POLE, changed.atPole(), details.atPole()),
        amending.of(RepField.REWARDS, changed.rewards(), details.rewards()),
        amending.of(RepField.HELP, changed.help(), details.help()),
        amending.of(RepField.HANDLER, changed.handler(), details.handler()),
        amending.of(RepField.OBSERVER, changed.observer(), details.observer()),
        amending.of(RepField.DRIVE, changed.drive(), details.drive()),
        amending.of(RepField.STRIDE, changed.stride(), details.stride()));
  }
}
