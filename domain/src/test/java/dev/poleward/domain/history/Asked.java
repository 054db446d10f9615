package dev.poleward.domain.history;

import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.domain.record.Waiting;
import dev.poleward.domain.record.Waiting.WaitingEvent;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A record that is asked something. */
public final class Asked {

  private final Facts facts;
  private final View view;
  private final Placement placement;

  Asked(Facts facts, View view) {
    this.facts = facts;
    this.view = view;
    this.placement = new Placement(facts, view);
  }

  /** The placement, for questions of its own. */
  public Placement placement() {
    return placement;
  }

  /** What is announced. */
  public Registry registry() {
    return new Registry(placement, view);
  }

  /** A dog that is known. */
  public DogRecord dog(String dog) {
    return registry().dog(dog).orElseThrow();
  }

  /** Names of the reps of a dog, in order. */
  public List<String> repsOf(String dog) {
    return placement.ofDog(dog).stream().map(PlacedRep::rep).toList();
  }

  /** Names of the reps of a session, in order. */
  public List<String> repsIn(String session) {
    return placement.inSession(session).stream().map(PlacedRep::rep).toList();
  }

  /** A rep that is placed. */
  public PlacedRep rep(String rep) {
    return placement.loggings(rep).stream()
        .flatMap(logging -> placement.place(logging).stream())
        .findFirst()
        .orElseThrow(() -> new AssertionError("no such rep is placed: " + rep));
  }

  /** The entry angle of a rep that is placed, in degrees; NaN when there is none. */
  public double angleOf(String rep) {
    EntryAngle angle = rep(rep).angle();
    return angle == null ? Double.NaN : angle.degrees();
  }

  /** Ids of the events that wait, each with what it waits for. */
  public Map<String, List<EntityRef>> waiting() {
    Map<String, List<EntityRef>> waiting = new TreeMap<>();
    for (WaitingEvent each : Waiting.of(facts, view)) {
      waiting.put(each.fact().id(), each.waitsFor());
    }
    return waiting;
  }
}
