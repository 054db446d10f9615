package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.layout.PoleLine;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.layout.TurningTable;
import dev.poleward.domain.running.RunningOrder;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a class takes along for a day without network.
 *
 * @param group the class
 * @param date the club's day
 * @param asked as which the running order was asked for: noon of the day, one pole set, an hour
 * @param present its members with their plans
 */
record FieldPack(
    String group,
    LocalDate date,
    ZoneId zone,
    RunningAsked asked,
    DogsPresent present,
    RunningOrder order) {

  /**
   * How far the last pole moves from rung to rung in the tables, at least, metres: 6 inches [C].
   */
  static final double LAST_POLE_MOVES = 0.1524;

  /** Where the tables end, degrees. */
  private static final double TURNED_TO = 90;

  /** Setups of one pack at most; more than that nobody carries about in a day. */
  static final int SETUPS_MAX = 60;

  /** What the class is called. */
  String name() {
    return present.group().formed().standing().event().name();
  }

  /** A dog's next session, as a plan would have it. */
  ObjectNode plan(DogToRun dog) {
    ObjectNode plan = dog.next().document(group, dog.dog(), JsonNodeFactory.instance.objectNode());
    plan.remove(List.of("plan", "asked", "dog"));
    return plan;
  }

  /** All setups that are needed, in the order in which dogs come to them. */
  List<Setup> setups() {
    return setups(present);
  }

  static List<Setup> setups(DogsPresent present) {
    return present.dogs().stream()
        .flatMap(dog -> dog.drills().stream())
        .map(DrillToRun::setup)
        .distinct()
        .toList();
  }

  /** The last pole of a very long line has to move farther, or there are too many rungs. */
  private static double degreesEach(PoleLine line) {
    return Math.max(line.turnOfChord(LAST_POLE_MOVES), TURNED_TO / TurningTable.RUNGS_MAX);
  }

  /** A table for each line of poles that is needed, shorter lines first. */
  Map<PoleLine, TurningTable> turning() {
    Map<PoleLine, TurningTable> tables = new LinkedHashMap<>();
    setups().stream()
        .map(setup -> new PoleLine(setup.poles(), setup.spacing()))
        .distinct()
        .sorted(Comparator.comparingDouble(PoleLine::length))
        .forEach(line -> tables.put(line, TurningTable.of(line, degreesEach(line), TURNED_TO)));
    return tables;
  }
}
