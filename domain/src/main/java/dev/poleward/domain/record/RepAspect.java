package dev.poleward.domain.record;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What two accounts of one run may say differently. The note is sealed, so not among it. */
public enum RepAspect {
  ANGLE(PlacedRep::angle),
  SETUP(PlacedRep::setup),
  DOG_SIDE(rep -> rep.details().dogSide()),
  OUTCOME(PlacedRep::outcome),
  AT_POLE(rep -> rep.details().atPole()),
  BACK_CHAIN_STEP(rep -> rep.details().backChainStep()),
  JUMP_TURN(rep -> rep.details().jumpTurn()),
  LATERAL_DISTANCE(rep -> rep.details().lateralDistance()),
  HANDLER_AT(rep -> rep.details().handlerAt()),
  CROSS_AT(rep -> rep.details().crossAt()),
  REWARDS(rep -> rep.details().rewards()),
  HELP(rep -> rep.details().help()),
  HANDLER(rep -> rep.details().handler()),
  OBSERVER(rep -> rep.details().observer()),
  DRIVE(rep -> rep.details().drive()),
  STRIDE(rep -> rep.details().stride());

  private final Function<PlacedRep, @Nullable Object> said;

  RepAspect(Function<PlacedRep, @Nullable Object> said) {
    this.said = said;
  }

  /** What two reps do not say alike, also where one of them says nothing. */
  static List<RepAspect> differing(PlacedRep one, PlacedRep other) {
    return Stream.of(values())
        .filter(aspect -> !Objects.equals(aspect.said.apply(one), aspect.said.apply(other)))
        .toList();
  }
}
