package dev.poleward.domain.judgement;

import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.KnownDog;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The dogs of a club, each read from the record when it is asked for. For one thread. */
public final class RecordedReturns implements ClubForgetting.Dogs {

  private final Placement placement;
  private final Registry registry;
  private final Facts facts;
  private @Nullable List<String> own;
  private final Map<String, DogReturns> read = new HashMap<>();

  /** Looks at a record as it was known in a view, to its end. */
  public RecordedReturns(Facts facts, View view) {
    View endless = new View(null, view.knownAt());
    this.placement = new Placement(facts, endless);
    this.registry = new Registry(placement, endless);
    this.facts = facts;
  }

  /** The dogs of a club that are looked through. */
  public static List<String> own(Facts facts, Registry registry) {
    return KnownDog.ofClub(facts, registry, "")
        .limit(KnownDog.LOOKED_AT_MAX)
        .filter(each -> !each.record().isGuest())
        .map(KnownDog::dog)
        .limit(ClubForgetting.DOGS_MAX)
        .toList();
  }

  @Override
  public List<String> own() {
    List<String> known = own;
    if (known == null) {
      known = own(facts, registry);
      own = known;
    }
    return known;
  }

  @Override
  public DogReturns returns(String dog, Instant before) {
    return read.computeIfAbsent(dog, each -> DogReturns.of(placement, registry, each));
  }
}
