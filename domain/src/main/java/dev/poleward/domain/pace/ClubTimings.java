package dev.poleward.domain.pace;

import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The timings of a club over a span, and which reps of its dogs they belong to. What somebody said
 * of it holds; the rest is given by the order in which things happened ({@link PlaceInOrder}), each
 * device by itself. A function of the events with their first recording times. Reads when it is
 * first asked, and once for all dogs; for one thread and one reading.
 */
public final class ClubTimings {

  private static final int DEVICES_AT_ONCE = 500;

  private final Placement placement;
  private final Instant from;
  private final Instant until;
  private final Map<String, List<PlacedRep>> inSession = new HashMap<>();
  private @Nullable List<DeviceTimings> devices;

  /**
   * Timings that happened from one instant on to before another, as {@code placement} sees them.
   */
  public ClubTimings(Placement placement, Instant from, Instant until) {
    this.placement = placement;
    this.from = from;
    this.until = until;
  }

  /**
   * The timings of a dog.
   *
   * @param reps of the dog, ascending by (time, id), of the same placement
   */
  public PairedTimings ofDog(String dog, List<PlacedRep> reps) {
    List<DeviceTimings> all = devices == null ? read() : devices;
    devices = all;
    if (all.isEmpty()) {
      return PairedTimings.NONE;
    }
    Pairing pairing =
        new Pairing(
            DogsReps.of(dog, reps, placement),
            session -> inSession.computeIfAbsent(session, placement::inSession));
    all.forEach(pairing::take);
    return pairing.paired();
  }

  /** Devices with timings, ascending by id. */
  private List<DeviceTimings> read() {
    SessionsOpened opened =
        new SessionsOpened(placement.facts(), placement.knowledge(), from, until);
    List<DeviceTimings> found = new ArrayList<>();
    String after = "";
    List<String> page;
    do {
      page = placement.facts().announced(EntityKind.DEVICE, after, DEVICES_AT_ONCE);
      for (String device : page) {
        List<Fact<TimingRecorded>> standing = standing(device);
        if (!standing.isEmpty()) {
          found.add(new DeviceTimings(device, standing, placement, opened));
        }
        after = device;
      }
    } while (page.size() == DEVICES_AT_ONCE);
    return found;
  }

  private List<Fact<TimingRecorded>> standing(String device) {
    return placement.facts().timingsOf(device, from, until).stream()
        .filter(fact -> placement.view().happened(fact) && placement.knowledge().stands(fact))
        .toList();
  }
}
