package dev.poleward.service.http;

import dev.poleward.domain.layout.FeetAndInches;
import dev.poleward.domain.layout.PoleLine;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.layout.TurningTable;
import dev.poleward.domain.running.AsItStands;
import dev.poleward.domain.running.RunningOrder.OfPoleSet;
import dev.poleward.domain.running.RunningOrder.Standing;
import dev.poleward.domain.running.RunningOrder.Turn;
import dev.poleward.service.page.Block;
import dev.poleward.service.page.Block.Column;
import dev.poleward.service.page.Leaf;
import dev.poleward.service.page.PlanLeaves;
import dev.poleward.service.page.Sheaf;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A field pack on paper: who runs when, each dog's session, how to lay out what is needed, how to
 * turn the line, and empty tables.
 */
final class FieldPackPaper {

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final int BLANK_ROWS = 22;

  private final FieldPack pack;
  private final Map<String, String> names;

  private FieldPackPaper(FieldPack pack) {
    this.pack = pack;
    this.names =
        pack.present().dogs().stream().collect(Collectors.toMap(DogToRun::dog, DogToRun::callName));
  }

  static Sheaf of(FieldPack pack) {
    return new FieldPackPaper(pack).sheaf();
  }

  private Sheaf sheaf() {
    String title = pack.name() + ", " + pack.date();
    List<Leaf> leaves = new ArrayList<>();
    leaves.add(new Leaf(title, whoRunsWhen()));
    leaves.addAll(
        PlanLeaves.of(
            pack.present().dogs().stream()
                .map(
                    dog ->
                        PlanPaper.of(
                            pack.plan(dog),
                            Optional.of(dog.next().standing().programme()),
                            dog.callName(),
                            pack.date()))
                .toList()));
    Map<PoleLine, TurningTable> turning = pack.turning();
    if (!turning.isEmpty()) {
      leaves.add(
          new Leaf(
              "Turning the line",
              turning.entrySet().stream()
                  .<Block>map(each -> table(each.getKey(), each.getValue()))
                  .toList()));
    }
    leaves.add(new Leaf("Reps that were not planned", List.of(blanks(), afterwards())));
    return new Sheaf(title + ": field pack", pack.date(), leaves);
  }

  private List<Block> whoRunsWhen() {
    RunningWords words = new RunningWords(pack.zone(), this::at);
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Aside(
            "Times are as if the class began at noon, with one set of poles and one instructor, an"
                + " hour long: shift them to when it begins. Ask for a running order to have your"
                + " own."));
    blocks.add(new Block.Paragraph(words.order(pack.order())));
    List<List<String>> rows = new ArrayList<>();
    for (OfPoleSet poleSet : pack.order().poleSets()) {
      for (Standing standing : poleSet.standings()) {
        for (Turn turn : standing.turns()) {
          rows.add(
              List.of(
                  clock(turn.starts()),
                  names.getOrDefault(turn.dog(), turn.dog()),
                  TrainersWords.setup(standing.setup()),
                  numbers(turn.dog(), standing.setup()),
                  turn.equals(standing.turns().getFirst())
                      ? String.format(Locale.ROOT, "%.1f m", standing.metres())
                      : ""));
        }
      }
    }
    blocks.add(
        rows.isEmpty()
            ? new Block.Paragraph("Nobody runs.")
            : new Block.Table(
                "Who runs when",
                List.of(
                    Column.text("From"),
                    Column.text("Dog"),
                    Column.text("What stands"),
                    Column.text("Setup"),
                    Column.number("Carried before")),
                rows));
    return blocks;
  }

  /** Where "How to lay it out" shows what a dog runs over what stands, by numbers. */
  private String numbers(String dog, Setup standing) {
    List<Setup> setups = pack.setups();
    return pack.present().dogs().stream()
        .filter(each -> each.dog().equals(dog))
        .flatMap(each -> each.drills().stream())
        .map(DrillToRun::setup)
        .filter(setup -> AsItStands.of(setup).equals(standing))
        .distinct()
        .map(setup -> String.valueOf(setups.indexOf(setup) + 1))
        .collect(Collectors.joining(", "));
  }

  private Instant at(int seconds) {
    return pack.asked().from().plusSeconds(seconds);
  }

  private String clock(int seconds) {
    return CLOCK.format(at(seconds).atZone(pack.zone()));
  }

  private static Block.Table table(PoleLine line, TurningTable table) {
    Function<Double, String> both =
        metres -> String.format(Locale.ROOT, "%.3f m, %s", metres, FeetAndInches.ofMetres(metres));
    return new Block.Table(
        "%d poles at %.3f m: pole 1 and the lead-in stay, the last pole moves %s each time"
            .formatted(
                line.poles(), line.spacing(), both.apply(line.chordOfTurn(table.degreesEach()))),
        List.of(
            Column.number("Rung"),
            Column.number("Turned by"),
            Column.number("Last pole, from rung to rung"),
            Column.number("Swing to the other side")),
        IntStream.range(0, table.rungs().size())
            .mapToObj(
                i ->
                    List.of(
                        String.valueOf(i + 1),
                        String.format(Locale.ROOT, "%.1f°", table.rungs().get(i).degrees()),
                        both.apply(table.rungs().get(i).lastPoleMoves()),
                        both.apply(table.rungs().get(i).swing())))
            .toList());
  }

  private static Block.Blanks blanks() {
    return new Block.Blanks(
        "One line a rep",
        List.of("Time", "Dog", "Setup", "From", "Handling, dog side", "Outcome, pole", "Reward"),
        Collections.nCopies(BLANK_ROWS, ""));
  }

  private static Block.Aside afterwards() {
    return new Block.Aside(
        "Last pole to the arriving dog's left: entry side pole. To its right: gap. Back in reach of"
            + " a network, send the session, its setups and each rep with the time when it"
            + " happened, in any order: it counts as if it had been sent then.");
  }
}
