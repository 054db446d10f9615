package dev.poleward.domain.pace;

import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.pace.PairedTimings.DeviceSeen;
import dev.poleward.domain.pace.TimedRep.Told;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.PlacedRep;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;

/** Puts the reps of one dog together with the timings of one device after the other. */
final class Pairing {

  private final DogsReps dog;
  private final Function<String, List<PlacedRep>> inSession;

  private final List<TimedRep> timed = new ArrayList<>();
  private final List<Fact<TimingRecorded>> unpaired = new ArrayList<>();
  private final List<DeviceSeen> devices = new ArrayList<>();
  private int unclaimed;

  /**
   * Begins with a dog.
   *
   * @param inSession all reps of a session, ascending by (time, id)
   */
  Pairing(DogsReps dog, Function<String, List<PlacedRep>> inSession) {
    this.dog = dog;
    this.inSession = inSession;
  }

  void take(DeviceTimings device) {
    if (!device.mayBeOf(dog)) {
      return;
    }
    int before = timed.size() + unpaired.size();
    device
        .byWord(dog)
        .forEach(
            (rep, timings) ->
                timings.forEach(
                    timing ->
                        timed.add(
                            new TimedRep(
                                Objects.requireNonNull(dog.byId().get(rep)),
                                timing,
                                Told.BY_WORD))));
    device.byDog(dog).forEach(timings -> takeOfDog(device, timings));
    Map<String, List<Fact<TimingRecorded>>> bySession = device.bySession(dog);
    bySession.forEach((session, timings) -> takeOfSession(device, session, timings));
    int seen = timed.size() + unpaired.size() - before;
    if (seen > 0 || !bySession.isEmpty()) {
      DeviceLog log = device.log();
      devices.add(
          new DeviceSeen(device.device(), seen, log.clocks().size() - 1, log.clocks().getLast()));
    }
  }

  private void takeOfDog(DeviceTimings device, List<Fact<TimingRecorded>> timings) {
    String session = timings.getFirst().event().session();
    List<PlacedRep> near =
        dog.ascending().stream()
            .filter(
                rep ->
                    session == null
                        ? timings.stream()
                            .anyMatch(each -> PlaceInOrder.near(each, rep, device.log()))
                        : rep.session().equals(session))
            .toList();
    Set<String> found = new HashSet<>();
    for (PlaceInOrder.Pair pair : device.pairs(timings, near)) {
      timed.add(new TimedRep(pair.rep(), pair.timing(), Told.BY_DOG));
      found.add(pair.timing().id());
    }
    timings.stream().filter(timing -> !found.contains(timing.id())).forEach(unpaired::add);
  }

  private void takeOfSession(
      DeviceTimings device, String session, List<Fact<TimingRecorded>> timings) {
    List<PlaceInOrder.Pair> pairs = device.pairsIn(session, timings, inSession.apply(session));
    unclaimed += timings.size() - pairs.size();
    for (PlaceInOrder.Pair pair : pairs) {
      if (pair.rep().dog().equals(dog.animal())) {
        timed.add(new TimedRep(pair.rep(), pair.timing(), Told.BY_SESSION));
      }
    }
  }

  /** Of several timings of one rep one is taken. */
  PairedTimings paired() {
    Map<String, TimedRep> taken = new HashMap<>();
    for (TimedRep each : timed) {
      taken.merge(each.rep().rep(), each, (one, other) -> one.compareTo(other) <= 0 ? one : other);
    }
    return new PairedTimings(
        taken.values().stream().sorted(Comparator.comparing(TimedRep::rep)).toList(),
        timed.size() - taken.size(),
        unpaired.stream().sorted(Comparator.comparing(Fact::moment)).toList(),
        unclaimed,
        List.copyOf(devices));
  }
}
