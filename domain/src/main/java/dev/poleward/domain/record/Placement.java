package dev.poleward.domain.record;

import dev.poleward.domain.event.RepEvent.RepAmended;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.SessionEvent.SetupChanged;
import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.Setup;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Places reps: decides for each whose it is, which amendments win and which setup was in force. The
 * one way from facts to reps, for now, {@code asOf} and {@code knownAt} alike. For one thread and
 * one reading.
 */
public final class Placement {

  private final Facts facts;
  private final View view;
  private final Corrections corrections;
  private final Knowledge knowledge;
  private final DogIdentity identity;
  private final Map<String, SessionSetups> setups = new HashMap<>();

  /** Places the reps among {@code facts} as {@code view} sees them. */
  public Placement(Facts facts, View view) {
    this.facts = facts;
    this.view = view;
    this.corrections = facts.corrections();
    this.knowledge = new Knowledge(facts, view);
    this.identity = new DogIdentity(corrections, knowledge);
  }

  /** The facts that it places. */
  public Facts facts() {
    return facts;
  }

  /** How it sees them. */
  public View view() {
    return view;
  }

  /** What this placement knows. */
  public Knowledge knowledge() {
    return knowledge;
  }

  /** Which registrations are one animal in this view. */
  public DogIdentity identity() {
    return identity;
  }

  /** The reps of a dog and of all that is one animal with it, ascending by (time, id). */
  public List<PlacedRep> ofDog(String dog) {
    String animal = identity.of(dog);
    List<Fact<RepLogged>> candidates = new ArrayList<>();
    for (String registration : identity.group(dog)) {
      candidates.addAll(facts.repsOf(registration));
      addMoved(candidates, corrections.repsMovedToDog(registration));
    }
    return placed(candidates, rep -> rep.dog().equals(animal));
  }

  /** The reps of a session, ascending by (time, id). */
  public List<PlacedRep> inSession(String session) {
    List<Fact<RepLogged>> candidates = new ArrayList<>(facts.repsIn(session));
    addMoved(candidates, corrections.repsMovedToSession(session));
    return placed(candidates, rep -> rep.session().equals(session));
  }

  private void addMoved(List<Fact<RepLogged>> candidates, Set<String> reps) {
    for (String rep : reps) {
      candidates.addAll(facts.repsLoggedAs(rep));
    }
  }

  private List<PlacedRep> placed(List<Fact<RepLogged>> candidates, Predicate<PlacedRep> wanted) {
    // In the order of the candidates, which is theirs already as a rule: then sorting costs little.
    Map<String, PlacedRep> placed = LinkedHashMap.newLinkedHashMap(candidates.size());
    for (Fact<RepLogged> candidate : candidates) {
      if (!placed.containsKey(candidate.id())) {
        place(candidate).filter(wanted).ifPresent(rep -> placed.put(candidate.id(), rep));
      }
    }
    return placed.values().stream().sorted().toList();
  }

  /**
   * Places one logging of a rep; empty when it is withdrawn, a duplicate, waiting, or outside the
   * view.
   */
  public Optional<PlacedRep> place(Fact<RepLogged> fact) {
    if (!knowledge.stands(fact) || !view.happened(fact)) {
      return Optional.empty();
    }
    List<String> duplicates = List.of();
    if (corrections.loggedTwice(fact.event().rep())) {
      List<Fact<RepLogged>> loggings = loggings(fact.event().rep());
      if (!loggings.getFirst().id().equals(fact.id())) {
        return Optional.empty();
      }
      duplicates = loggings.stream().skip(1).filter(view::happened).map(Fact::id).toList();
    }
    CorrectedRep rep = corrected(fact);
    if (!knowledge.missing(referencesOf(fact, rep)).isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(placed(fact, rep, duplicates));
  }

  /** A rep by its id; empty when no logging of it is placed. */
  public Optional<PlacedRep> ofRep(String rep) {
    return loggings(rep).stream().findFirst().flatMap(this::place);
  }

  /** The loggings of a rep that stand, the one that holds first. */
  public List<Fact<RepLogged>> loggings(String rep) {
    List<Fact<RepLogged>> standing = new ArrayList<>(facts.repsLoggedAs(rep));
    standing.removeIf(logging -> !knowledge.stands(logging));
    return Precedence.standingFirst(standing);
  }

  /**
   * What a fact waits for. A rep that an amendment has moved from an unknown session to a known one
   * waits no longer.
   */
  public List<EntityRef> waitsFor(Fact<?> fact) {
    Fact<RepLogged> logged = fact.as(RepLogged.class);
    List<EntityRef> references =
        logged == null ? References.of(fact.event()) : referencesOf(logged, corrected(logged));
    return knowledge.missing(references);
  }

  private static List<EntityRef> referencesOf(Fact<RepLogged> fact, CorrectedRep rep) {
    return References.of(
        new RepLogged(
            fact.event().rep(),
            rep.session(),
            rep.dog(),
            rep.manoeuvre(),
            rep.outcome(),
            rep.details()));
  }

  private CorrectedRep corrected(Fact<RepLogged> fact) {
    CorrectedRep rep = CorrectedRep.of(fact);
    List<Fact<RepAmended>> amendments = corrections.amendmentsOf(fact.event().rep());
    if (amendments.isEmpty()) {
      return rep;
    }
    for (Fact<RepAmended> amendment : Precedence.standingFirst(amendments)) {
      if (knowledge.counts(amendment)) {
        rep = rep.amendedBy(amendment);
      }
    }
    return rep;
  }

  private PlacedRep placed(Fact<RepLogged> fact, CorrectedRep rep, List<String> duplicates) {
    Setup setup = rep.details().setup();
    String setupEvent = null;
    if (setup == null) {
      String poleSet = rep.details().poleSet();
      Fact<SetupChanged> inForce =
          setupsOf(rep.session())
              .inForce(poleSet == null ? SessionSetups.MAIN : poleSet, fact.time());
      if (inForce != null) {
        setup = inForce.event().setup();
        setupEvent = inForce.id();
      }
    }
    Approach approach = approach(rep, setup);
    return new PlacedRep(
        fact.moment(),
        fact.event().rep(),
        rep.session(),
        identity.of(rep.dog()),
        rep.manoeuvre(),
        rep.outcome(),
        rep.details(),
        approach == null ? null : approach.entry().asLaidOut(),
        setup,
        setupEvent,
        rep.note(),
        rep.amendedBy(),
        duplicates);
  }

  private static @Nullable Approach approach(CorrectedRep rep, @Nullable Setup setup) {
    if (rep.details().approach() != null) {
      return rep.details().approach();
    }
    return setup == null ? null : setup.approach();
  }

  private SessionSetups setupsOf(String session) {
    return setups.computeIfAbsent(
        session,
        id ->
            new SessionSetups(
                knowledge.counting(new EntityRef(EntityKind.SESSION, id), SetupChanged.class)));
  }
}
