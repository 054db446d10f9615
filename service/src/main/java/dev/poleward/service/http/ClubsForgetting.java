package dev.poleward.service.http;

import dev.poleward.domain.judgement.ClubForgetting;
import dev.poleward.domain.judgement.DogReturns;
import dev.poleward.domain.judgement.ExpectedRetention;
import dev.poleward.domain.judgement.RecordedReturns;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.service.projection.Reading;
import dev.poleward.service.projection.RememberedOfDogs;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;

/**
 * How the dogs of each club forget, for whoever judges one of them. Their returns are remembered,
 * so that one dog can be judged without reading all others. Safe for use by many threads.
 */
final class ClubsForgetting {

  private static final long BYTES_HELD_MAX = 8L << 20;

  /** About what a return takes. */
  private static final int BYTES_OF_RETURN = 96;

  private static final RememberedOfDogs.Making<DogReturns> MAKING =
      new RememberedOfDogs.Making<>() {
        @Override
        public List<String> dogs(Placement placement, Registry registry) {
          return RecordedReturns.own(placement.facts(), registry);
        }

        @Override
        public DogReturns made(Placement placement, Registry registry, String dog) {
          return DogReturns.of(placement, registry, dog);
        }
      };

  private final RememberedOfDogs<DogReturns> returns =
      new RememberedOfDogs<>(MAKING, BYTES_HELD_MAX, dog -> (long) dog.size() * BYTES_OF_RETURN);

  /**
   * What is expected of the dogs of a club, for as long as the reading is open. For one thread.
   *
   * @param placement of the reading's facts, in the view that is asked for
   * @param zone of the club's days
   */
  ExpectedRetention of(Reading reading, Placement placement, ZoneId zone) {
    View view = placement.view();
    return new ClubForgetting(
        new Heard(returns.at(reading, view.knownAt())), placement.identity(), view, zone);
  }

  private record Heard(RememberedOfDogs.Dogs<DogReturns> of) implements ClubForgetting.Dogs {

    @Override
    public List<String> own() {
      return of.dogs();
    }

    @Override
    public DogReturns returns(String dog, Instant before) {
      return of.of(dog, before);
    }
  }
}
