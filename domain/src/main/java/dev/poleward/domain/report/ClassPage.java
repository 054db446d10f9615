package dev.poleward.domain.report;

import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.report.NotKnown.Matter;
import java.util.ArrayList;
import java.util.List;

/**
 * What a report says of a class as a whole.
 *
 * @param sessions of the class that were opened within the span, ascending
 * @param reps run in them, by whichever dog
 * @param membersReps run by its dogs within the span, wherever
 * @param stuckOn what most dogs are stuck on first
 * @param equipment what stood in the sessions
 * @param notKnown what the page cannot say
 */
public record ClassPage(
    List<ClassSession> sessions,
    RepTally reps,
    RepTally membersReps,
    List<StuckOn> stuckOn,
    EquipmentUse equipment,
    List<NotKnown> notKnown) {

  /** Keeps the lists from changing. */
  public ClassPage {
    sessions = List.copyOf(sessions);
    stuckOn = List.copyOf(stuckOn);
    notKnown = List.copyOf(notKnown);
  }

  /** Of all dogs of the class. */
  static ClassPage of(List<ClassSession> sessions, List<DogPage> dogs) {
    List<PlacedRep> run = sessions.stream().flatMap(session -> session.reps().stream()).toList();
    EquipmentUse equipment = EquipmentUse.of(sessions);
    return new ClassPage(
        sessions,
        RepTally.of(run),
        sum(dogs),
        StuckOn.among(dogs),
        equipment,
        notKnown(sessions, dogs, equipment));
  }

  private static RepTally sum(List<DogPage> dogs) {
    return dogs.stream()
        .map(DogPage::reps)
        .reduce(
            new RepTally(0, 0, 0, 0),
            (one, other) ->
                new RepTally(
                    one.reps() + other.reps(),
                    one.clean() + other.clean(),
                    one.helped() + other.helped(),
                    one.voided() + other.voided()));
  }

  private static List<NotKnown> notKnown(
      List<ClassSession> sessions, List<DogPage> dogs, EquipmentUse equipment) {
    List<NotKnown> all =
        List.of(
            new NotKnown(Matter.SESSIONS, sessions.isEmpty() ? 1 : 0),
            new NotKnown(Matter.MEMBERS, dogs.isEmpty() ? 1 : 0),
            new NotKnown(Matter.REPS, (int) dogs.stream().filter(d -> d.reps().all() == 0).count()),
            new NotKnown(
                Matter.ATTENDANCE,
                sessions.stream().mapToInt(each -> each.count(Presence.UNKNOWN)).sum()),
            new NotKnown(
                Matter.CONTRADICTED_ATTENDANCE,
                (int)
                    sessions.stream()
                        .flatMap(each -> each.members().stream())
                        .filter(Attendance::isContradicted)
                        .count()),
            new NotKnown(
                Matter.SETUP_OF_SESSIONS,
                (int)
                    sessions.stream()
                        .filter(each -> each.setups().isEmpty() && !each.reps().isEmpty())
                        .filter(each -> each.reps().stream().anyMatch(r -> r.setup() == null))
                        .count()),
            new NotKnown(Matter.EQUIPMENT_TIME, equipment.unknown()));
    List<NotKnown> found = new ArrayList<>(all);
    found.removeIf(each -> each.count() == 0);
    return found;
  }
}
