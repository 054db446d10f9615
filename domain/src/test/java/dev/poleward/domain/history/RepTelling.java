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
import dev.poleward.domain.event.Stride;
import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.ClockPosition;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.Setup;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What is said of a rep when it is logged or amended, word by word. */
public final class RepTelling {

  private @Nullable String session;
  private @Nullable String dog;
  private @Nullable Manoeuvre manoeuvre;
  private @Nullable Outcome outcome;
  private @Nullable DogSide dogSide;
  private @Nullable BackChainStep backChainStep;
  private @Nullable JumpTurn jumpTurn;
  private @Nullable Double lateralDistance;
  private @Nullable String handlerAt;
  private @Nullable CrossAt crossAt;
  private @Nullable Approach approach;
  private @Nullable Setup setup;
  private @Nullable String poleSet;
  private @Nullable Integer atPole;
  private @Nullable List<Reward> rewards;
  private @Nullable Help help;
  private @Nullable String handler;
  private @Nullable String observer;
  private @Nullable Integer drive;
  private @Nullable Stride stride;
  private final Set<RepField> cleared = EnumSet.noneOf(RepField.class);

  RepTelling() {}

  /** In that session; s-1 when not said. */
  public RepTelling in(String said) {
    session = said;
    return this;
  }

  /** By that dog; juniper when not said. */
  public RepTelling by(String said) {
    dog = said;
    return this;
  }

  /** With that manoeuvre; alongside when not said. */
  public RepTelling with(Manoeuvre said) {
    manoeuvre = said;
    return this;
  }

  /** With that outcome. */
  public RepTelling ended(Outcome said) {
    outcome = said;
    return this;
  }

  /** From that angle. */
  public RepTelling from(double degrees) {
    approach = new Approach(new EntryAngle(degrees), null);
    return this;
  }

  /** From that clock position. */
  public RepTelling from(String clock) {
    approach = new Approach(null, ClockPosition.read(clock).orElseThrow());
    return this;
  }

  /** Over this setup, said with the rep. */
  public RepTelling over(Setup said) {
    setup = said;
    return this;
  }

  /** On that set of poles. */
  public RepTelling on(String said) {
    poleSet = said;
    return this;
  }

  public RepTelling dogSide(DogSide said) {
    dogSide = said;
    return this;
  }

  public RepTelling backChainStep(BackChainStep said) {
    backChainStep = said;
    return this;
  }

  public RepTelling jumpTurn(JumpTurn said) {
    jumpTurn = said;
    return this;
  }

  public RepTelling lateralDistance(double metres) {
    lateralDistance = metres;
    return this;
  }

  public RepTelling handlerAt(String said) {
    handlerAt = said;
    return this;
  }

  public RepTelling crossAt(CrossAt said) {
    crossAt = said;
    return this;
  }

  public RepTelling atPole(int said) {
    atPole = said;
    return this;
  }

  public RepTelling rewards(Reward... said) {
    rewards = List.of(said);
    return this;
  }

  public RepTelling help(Help said) {
    help = said;
    return this;
  }

  public RepTelling handler(String said) {
    handler = said;
    return this;
  }

  public RepTelling observer(String said) {
    observer = said;
    return this;
  }

  public RepTelling drive(int said) {
    drive = said;
    return this;
  }

  public RepTelling stride(Stride said) {
    stride = said;
    return this;
  }

  /** Takes a field away, in an amendment. */
  public RepTelling without(RepField said) {
    cleared.add(said);
    return this;
  }

  RepLogged logged(String rep) {
    return new RepLogged(
        rep,
        session == null ? "s-1" : session,
        dog == null ? "juniper" : dog,
        manoeuvre == null ? Manoeuvre.ALONGSIDE : manoeuvre,
        outcome == null ? Outcome.CLEAN : outcome,
        details());
  }

  RepAmended amended(String rep) {
    return new RepAmended(rep, session, dog, manoeuvre, outcome, details(), cleared);
  }

  private RepDetails details() {
    return new RepDetails(
        dogSide,
        backChainStep,
        jumpTurn,
        lateralDistance,
        handlerAt,
        crossAt,
        approach,
        setup,
        poleSet,
        atPole,
        rewards,
        help,
        handler,
        observer,
        drive,
        stride);
  }
}
