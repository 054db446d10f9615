package dev.poleward.service.http;

import dev.poleward.domain.care.Conditions;
import dev.poleward.domain.care.Trained;
import dev.poleward.domain.judgement.ExpectedRetention;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.pace.ClubTimings;
import dev.poleward.domain.record.ClassRecord;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.domain.running.AsItStands;
import dev.poleward.domain.running.Following;
import dev.poleward.domain.running.Ran;
import dev.poleward.domain.running.RunningQuestion;
import dev.poleward.domain.running.Wanted;
import dev.poleward.service.contract.Fault;
import dev.poleward.service.http.ClubReads.Reader;
import dev.poleward.service.http.RunningAsked.Present;
import dev.poleward.service.http.RunningAsked.TurnRun;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The dogs of a class that are to run, with what they are to run, from the record and the question;
 * remembers every fault of the question that only the record shows. For one thread.
 */
final class DogsPresent {

  private final RunningAsked asked;
  private final Reader reader;
  private final PlacedReps placed;
  private final ExpectedRetention retention;
  private final View view;
  private final Placement placement;
  private final ClubTimings timings;
  private final Registry registry;
  private final ClassRecord group;
  private final List<Fault> faults = new ArrayList<>();
  private final List<DogToRun> dogs = new ArrayList<>();

  private DogsPresent(
      RunningAsked asked,
      Reader reader,
      PlacedReps placed,
      ClubsForgetting clubs,
      View view,
      Placement placement,
      Registry registry,
      ClassRecord group) {
    this.asked = asked;
    this.reader = reader;
    this.placed = placed;
    this.view = view;
    this.placement = placement;
    this.registry = registry;
    this.timings =
        Trained.timings(
            placement, Care.question(registry, Conditions.NOT_SAID, asked.time()).end());
    this.retention = clubs.of(reader.reading(), placement, LocalDays.zone(registry));
    this.group = group;
  }

  /** Empty where there is no such class. */
  static Optional<DogsPresent> of(
      RunningAsked asked, Reader reader, PlacedReps placed, ClubsForgetting clubs, String name) {
    View view = new View(asked.time(), null);
    Placement placement = new Placement(reader.reading().facts(), view);
    Registry registry = new Registry(placement, view);
    return registry
        .group(name)
        .map(
            group -> {
              DogsPresent present =
                  new DogsPresent(asked, reader, placed, clubs, view, placement, registry, group);
              present.look();
              return present;
            });
  }

  Registry registry() {
    return registry;
  }

  /** The class. */
  ClassRecord group() {
    return group;
  }

  List<Fault> faults() {
    return faults;
  }

  List<DogToRun> dogs() {
    return dogs;
  }

  RunningQuestion question() {
    List<Wanted> wanted = new ArrayList<>();
    Map<String, Integer> comes = new HashMap<>();
    for (DogToRun dog : dogs) {
      wanted.addAll(dog.wanted(asked.repsPerTurn()));
      comes.put(dog.dog(), dog.comes());
    }
    Set<Following> apart = new HashSet<>();
    for (Following following : asked.apart()) {
      apart.add(new Following(known(following.dog()), known(following.after())));
    }
    return new RunningQuestion(
        dogs.stream().map(DogToRun::dog).toList(),
        wanted,
        asked.poleSets(),
        asked.instructors(),
        asked.pace(),
        asked.seconds(),
        apart,
        comes,
        asked.ran().stream()
            .map(ran -> new Ran(known(ran.dog()), ran.poleSet(), ran.setup(), ran.ended()))
            .toList());
  }

  /** How many of a dog's turns over a setup were run before the order begins. */
  int ran(String dog, Setup standing) {
    return (int)
        asked.ran().stream()
            .filter(ran -> known(ran.dog()).equals(dog))
            .filter(ran -> AsItStands.of(ran.setup()).equals(standing))
            .count();
  }

  private String known(String dog) {
    return placement.identity().of(dog);
  }

  private void look() {
    List<Present> present = asked.dogs();
    if (present == null) {
      if (group.members().size() > RunningQuestion.DOGS_MAX) {
        faults.add(
            new Fault(
                "/dogs",
                "is required: the class has %d members, and %d at most run in one order"
                    .formatted(group.members().size(), RunningQuestion.DOGS_MAX)));
        return;
      }
      present = group.members().keySet().stream().map(dog -> new Present(dog, null, null)).toList();
    }
    judge(present);
    if (faults.isEmpty()) {
      Registry today = today();
      for (Present dog : present) {
        today.dog(known(dog.dog())).ifPresent(record -> dogs.add(toRun(dog, record)));
      }
      judgeSize();
    }
  }

  /** Who was rested or cleared since the class began, is so. */
  private Registry today() {
    if (asked.from().equals(asked.time())) {
      return registry;
    }
    View later = new View(asked.from(), null);
    return new Registry(new Placement(reader.reading().facts(), later), later);
  }

  private void judge(List<Present> present) {
    Set<String> before = new HashSet<>();
    for (int i = 0; i < present.size(); i++) {
      String pointer = "/dogs/" + i + "/dog";
      if (judgeMember(present.get(i).dog(), pointer) && !before.add(known(present.get(i).dog()))) {
        faults.add(new Fault(pointer, "is the same dog as one before"));
      }
    }
    for (int i = 0; i < asked.apart().size(); i++) {
      Following following = asked.apart().get(i);
      judgeMember(following.dog(), "/apart/" + i + "/dog");
      judgeMember(following.after(), "/apart/" + i + "/after");
    }
    for (TurnRun ran : asked.ran()) {
      judgeMember(ran.dog(), "/ran/" + ran.place() + "/dog");
    }
  }

  private boolean judgeMember(String dog, String pointer) {
    boolean member = group.members().containsKey(known(dog));
    if (!member) {
      faults.add(new Fault(pointer, "is not a member of the class at that time"));
    }
    return member;
  }

  private DogToRun toRun(Present present, DogRecord record) {
    String dog = known(present.dog());
    NextSession next =
        NextSession.of(
            dog,
            record,
            registry,
            timings,
            placed.ofDog(reader.reading(), placement, view, dog),
            retention,
            view.asOf(),
            asked.plans(),
            asked.time());
    List<DrillToRun> said = present.drills();
    return new DogToRun(
        dog,
        record.callName(),
        present.comes() == null
            ? 0
            : Math.max(0, RunningAsked.secondsFrom(asked.from(), present.comes())),
        said == null,
        said == null
            ? next.plan().blocks().stream()
                .map(block -> DrillToRun.planned(next.standing().programme(), block))
                .toList()
            : said,
        next.permit().notes(),
        next);
  }

  private void judgeSize() {
    List<Wanted> wanted =
        dogs.stream().flatMap(dog -> dog.wanted(asked.repsPerTurn()).stream()).toList();
    int turns = wanted.stream().mapToInt(Wanted::turns).sum();
    long setups = wanted.stream().map(Wanted::setup).distinct().count();
    if (turns > RunningQuestion.TURNS_MAX) {
      faults.add(
          new Fault(
              "/dogs",
              "come to %d turns; %d at most run in one order"
                  .formatted(turns, RunningQuestion.TURNS_MAX)));
    }
    if (setups > RunningQuestion.SETUPS_MAX) {
      faults.add(
          new Fault(
              "/dogs",
              "come to %d setups that stand differently; %d at most stand in one order"
                  .formatted(setups, RunningQuestion.SETUPS_MAX)));
    }
  }
}
