package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.running.RunningOrder;
import dev.poleward.domain.running.RunningOrder.LeftOut;
import dev.poleward.domain.running.RunningOrder.OfPoleSet;
import dev.poleward.domain.running.RunningOrder.Standing;
import dev.poleward.domain.running.RunningOrder.Turn;
import dev.poleward.service.codec.SetupCodec;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.http.DogToRun.DrillPart;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** Running orders as the contract shows them. For one answer. */
final class RunningShape {

  private static final double SECONDS_IN_A_MINUTE = 60;

  private record Out(String dog, Setup setup, int starts) {}

  private final RunningAsked asked;
  private final DogsPresent present;
  private final RunningOrder order;
  private final RunningWords words;
  private final Map<String, DogToRun> dogs;

  /** Which of the dog's turns over the setup it is, from 0. */
  private final Map<Out, Integer> numbers = new HashMap<>();

  RunningShape(RunningAsked asked, DogsPresent present, RunningOrder order, ZoneId zone) {
    this.asked = asked;
    this.present = present;
    this.order = order;
    this.words = new RunningWords(zone, this::at);
    this.dogs = present.dogs().stream().collect(Collectors.toMap(DogToRun::dog, each -> each));
    count();
  }

  private void count() {
    for (OfPoleSet poleSet : order.poleSets()) {
      for (Standing standing : poleSet.standings()) {
        Map<String, Integer> before = new HashMap<>();
        for (Turn turn : standing.turns()) {
          int number =
              before.computeIfAbsent(turn.dog(), dog -> present.ran(dog, standing.setup()));
          numbers.put(new Out(turn.dog(), standing.setup(), turn.starts()), number);
          before.put(turn.dog(), number + 1);
        }
      }
    }
  }

  private DogToRun known(String dog) {
    return Objects.requireNonNull(dogs.get(dog));
  }

  ObjectNode of(String group) {
    return new Writing()
        .put("class", group)
        .putPrinted("time", asked.time())
        .putPrinted("from", asked.from())
        .putPrinted("until", at(asked.seconds()))
        .put("turnMinutes", minutes(asked.pace().turn()))
        .put("changeMinutes", minutes(asked.pace().change()))
        .put("restMinutes", minutes(asked.pace().rest()))
        .put("repsPerTurn", asked.repsPerTurn())
        .put("text", words.order(order))
        .putPrinted("ends", at(order.ends()))
        .put("metres", order.carried().amount())
        .put("metresAtLeast", order.carried().atLeast())
        .put("waitMinutes", minutes(order.waited().amount()))
        .put("waitMinutesAtLeast", minutes(order.waited().atLeast()))
        .put("exact", order.isBest())
        .put("naive", naive())
        .putObjects("poleSets", order.poleSets(), this::poleSet)
        .putObjects("dogs", present.dogs(), this::dog)
        .putObjects("leftOut", leftOut(), each -> each)
        .done();
  }

  private ObjectNode naive() {
    return new Writing()
        .put("metres", order.naive().metres())
        .put("waitMinutes", minutes(order.naive().waited()))
        .putPrinted("ends", at(order.naive().ends()))
        .put("text", words.naive(order.naive()))
        .done();
  }

  private ObjectNode poleSet(OfPoleSet poleSet) {
    return new Writing()
        .put("poleSet", poleSet.name())
        .putPrinted("ends", poleSet.standings().isEmpty() ? null : at(poleSet.ends()))
        .putObjects("setups", poleSet.standings(), this::standing)
        .done();
  }

  private ObjectNode standing(Standing standing) {
    Setup setup = standing.setup();
    return new Writing()
        .put("setup", SetupCodec.write(setup))
        .putPrinted(
            "clock",
            setup.approach() == null ? null : setup.approach().entry().clock().orElse(null))
        .put("metres", standing.metres())
        .putPrinted("ready", at(standing.ready()))
        .put("text", words.standing(standing))
        .putObjects("turns", standing.turns(), turn -> turn(setup, turn))
        .done();
  }

  private ObjectNode turn(Setup setup, Turn turn) {
    int number = Objects.requireNonNull(numbers.get(new Out(turn.dog(), setup, turn.starts())));
    List<DrillPart> parts = known(turn.dog()).turn(setup, number, asked.repsPerTurn());
    return new Writing()
        .put("dog", turn.dog())
        .putPrinted("starts", at(turn.starts()))
        .putPrinted("ends", at(turn.ends()))
        .put("reps", parts.stream().mapToInt(DrillPart::reps).sum())
        .putObjects("drills", parts, part -> part.drill().told(part.reps()))
        .done();
  }

  private ObjectNode dog(DogToRun dog) {
    long turns = numbers.keySet().stream().filter(out -> out.dog().equals(dog.dog())).count();
    return new Writing()
        .put("dog", dog.dog())
        .put("callName", dog.callName())
        .put("planned", dog.planned())
        .put("turns", turns)
        .putObjects("drills", dog.drills(), DrillToRun::told)
        .putObjects("notes", dog.notes(), PlanShape::note)
        .done();
  }

  private List<ObjectNode> leftOut() {
    List<ObjectNode> leftOut = new ArrayList<>();
    for (DogToRun dog : present.dogs()) {
      if (dog.drills().isEmpty()) {
        leftOut.add(
            new Writing()
                .put("dog", dog.dog())
                .put("why", dog.isStopped() ? "care" : "nothing")
                .put(
                    "text",
                    dog.isStopped()
                        ? RunningWords.stopped(dog.callName())
                        : RunningWords.nothing(dog.callName()))
                .done());
      }
    }
    Map<LeftOut, Integer> turns = new LinkedHashMap<>();
    order.leftOut().forEach(turn -> turns.merge(turn, 1, Integer::sum));
    turns.forEach((turn, count) -> leftOut.add(leftOut(turn, count)));
    return leftOut;
  }

  private ObjectNode leftOut(LeftOut turn, int count) {
    return new Writing()
        .put("dog", turn.dog())
        .put(
            "why",
            switch (turn.why()) {
              case TIME_IS_UP -> "time";
              case RESTS_TOO_LONG -> "rest";
            })
        .put("setup", SetupCodec.write(turn.setup()))
        .put("turns", count)
        .put("text", RunningWords.leftOut(known(turn.dog()).callName(), turn.why(), count))
        .done();
  }

  private Instant at(int seconds) {
    return asked.from().plusSeconds(seconds);
  }

  private static double minutes(double seconds) {
    return seconds / SECONDS_IN_A_MINUTE;
  }
}
