package dev.poleward.domain.history;

import dev.poleward.domain.event.ClassEvent.ClassFormed;
import dev.poleward.domain.event.ClassEvent.ClassJoined;
import dev.poleward.domain.event.ClassEvent.ClassLeft;
import dev.poleward.domain.event.DogEvent.DogAmended;
import dev.poleward.domain.event.DogEvent.DogMerged;
import dev.poleward.domain.event.DogEvent.DogRegistered;
import dev.poleward.domain.event.DogTrait;
import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.EventWithdrawn;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RegistryEvent.HandlerRegistered;
import dev.poleward.domain.event.SessionEvent.SessionAttended;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.event.SessionEvent.SetupChanged;
import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Words to tell with what happens in a club. Meant to be imported statically. */
public final class Tell {

  /** Nothing said of a dog but its name. */
  public static final DogTraits NO_TRAITS = new DogTraits(null, null, null, null, null);

  private Tell() {}

  public static Happening sessionOpened(String session) {
    return Happening.of(opening(session));
  }

  static SessionOpened opening(String session) {
    return new SessionOpened(session, null, null, null, null, null);
  }

  /** In s-1 four poles stand behind a tunnel at that angle. */
  public static Happening setupAt(double degrees) {
    return setup("s-1", tunnelAt(degrees));
  }

  /** The same on another set of poles. */
  public static Happening setupAt(double degrees, String poleSet) {
    return Happening.of(new SetupChanged("s-1", tunnelAt(degrees), poleSet));
  }

  public static Happening setup(String session, Setup setup) {
    return Happening.of(new SetupChanged(session, setup, null));
  }

  /** Four poles, a tunnel at that angle. */
  public static Setup tunnelAt(double degrees) {
    Approach approach = new Approach(new EntryAngle(degrees), null);
    return new Setup(4, 0.6, LeadIn.TUNNEL, 4.7, approach, null, null, null);
  }

  /** That many poles and nothing before them. */
  public static Setup barePoles(int poles) {
    return new Setup(poles, 0.6, LeadIn.NONE, null, null, null, null, null);
  }

  /** r-1, a rep of juniper's in s-1. */
  public static Happening rep(Outcome outcome) {
    return rep("r-1", rep -> rep.ended(outcome));
  }

  /** A clean rep of juniper's in s-1. */
  public static Happening rep(String rep) {
    return rep(rep, said -> said);
  }

  /** A rep; what is not said is a clean rep of juniper's in s-1, alongside. */
  public static Happening rep(String rep, UnaryOperator<RepTelling> said) {
    return Happening.of(said.apply(new RepTelling()).logged(rep));
  }

  public static Happening amended(String rep, UnaryOperator<RepTelling> said) {
    return Happening.of(said.apply(new RepTelling()).amended(rep));
  }

  public static Happening withdrawn(String event) {
    return Happening.of(new EventWithdrawn(event, "tapped by mistake"));
  }

  public static Happening dogRegistered(String dog) {
    return dogRegistered(dog, NO_TRAITS);
  }

  public static Happening dogRegistered(String dog, DogTraits traits) {
    return Happening.of(new DogRegistered(dog, "called " + dog, traits));
  }

  public static Happening dogAmended(String dog, DogTraits traits, DogTrait... cleared) {
    return Happening.of(new DogAmended(dog, null, traits, Set.of(cleared)));
  }

  public static Happening dogRenamed(String dog, String callName) {
    return Happening.of(new DogAmended(dog, callName, NO_TRAITS, Set.of()));
  }

  public static Happening merged(String dog, String into) {
    return Happening.of(new DogMerged(dog, into));
  }

  public static Happening handlerRegistered(String handler) {
    return Happening.of(new HandlerRegistered(handler));
  }

  public static Happening classFormed(String group) {
    return Happening.of(new ClassFormed(group, "Evening weaves", null, null));
  }

  public static Happening joined(String group, String dog) {
    return Happening.of(new ClassJoined(group, dog));
  }

  public static Happening left(String group, String dog) {
    return Happening.of(new ClassLeft(group, dog));
  }

  public static Happening attended(String session, String dog, boolean present) {
    return Happening.of(new SessionAttended(session, dog, present));
  }
}
