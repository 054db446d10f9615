package dev.poleward.domain.record;

import dev.poleward.domain.event.DogEvent.DogAmended;
import dev.poleward.domain.event.DogEvent.DogCleared;
import dev.poleward.domain.event.DogEvent.DogRegistered;
import dev.poleward.domain.event.DogEvent.DogRested;
import dev.poleward.domain.event.DogTrait;
import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammeAssigned;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A dog as it stands in a view.
 *
 * @param callName after amendments
 * @param traits after amendments
 * @param amendments those that count, ascending by (time, id)
 * @param mergedInto the registration it counts under, when not its own
 * @param merged other registrations that are the same animal
 * @param rested the latest rest, if any
 * @param cleared the latest clearance, if any
 * @param programme the latest assignment, if any
 */
public record DogRecord(
    Registered<DogRegistered> registered,
    String callName,
    DogTraits traits,
    List<Fact<DogAmended>> amendments,
    @Nullable String mergedInto,
    List<String> merged,
    @Nullable Fact<DogRested> rested,
    @Nullable Fact<DogCleared> cleared,
    @Nullable Fact<ProgrammeAssigned> programme) {

  /** Whether it trains here without being of the club. */
  public boolean isGuest() {
    return Boolean.TRUE.equals(traits.guest());
  }

  /** What an amendment leaves of a dog's traits; to be called in ascending order. */
  static DogTraits corrected(DogTraits before, DogAmended amended) {
    DogTraits changed = amended.traits();
    Amending amending = new Amending(amended.cleared());
    return new DogTraits(
        amending.of(DogTrait.BORN, changed.born(), before.born()),
        amending.of(DogTrait.WITHERS_HEIGHT, changed.withersHeight(), before.withersHeight()),
        amending.of(DogTrait.HEAT_RISK, changed.heatRisk(), before.heatRisk()),
        amending.of(DogTrait.HANDLERS, changed.handlers(), before.handlers()),
        amending.of(DogTrait.GUEST, changed.guest(), before.guest()));
  }
}
