package dev.poleward.service.render;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.StageStanding;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.ProgrammeInForce;
import dev.poleward.domain.programme.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What the picture of a dog's way says in words. */
final class WayWords {

  /** Runs of rungs that stand alike that are told one by one of a row. */
  private static final int RUNS_TOLD_MAX = 24;

  /** So many of what is next are told. */
  static final int NEXT_MAX = 8;

  private final DogWay of;
  private final Programme programme;

  WayWords(DogWay of) {
    this.of = of;
    this.programme = of.standing().programme();
  }

  String title() {
    return of.dog().callName() + ": the way through the programme";
  }

  String about() {
    return "The way through "
        + PrintableName.of(programme.name(), programme.id())
        + ", version "
        + programme.version()
        + ".";
  }

  String aged() {
    return followed() + "As it stands on " + of.dog().agedTo() + ".";
  }

  private String followed() {
    return switch (of.inForce()) {
      case ProgrammeInForce.Assigned _ -> "";
      case ProgrammeInForce.Unassigned _ -> "No programme was assigned: this one is followed. ";
      case ProgrammeInForce.Unreadable _ ->
          "The version in force cannot be read: judged as before it. ";
    };
  }

  String now() {
    if (of.standing().finished()) {
      return "Through with the programme.";
    }
    return of.standing()
        .current()
        .map(stage -> "Now in: " + name(stage.stage()) + ".")
        .orElse("No stage has its turn.");
  }

  /** What is next, in its order; what is beyond the room in a last line. */
  List<String> next() {
    if (of.next().isEmpty()) {
      return List.of("Nothing is next.");
    }
    List<String> lines = new ArrayList<>();
    of.next().stream().limit(NEXT_MAX).forEach(next -> lines.add(next.reason()));
    int more = of.next().size() - NEXT_MAX;
    if (more > 0) {
      lines.add("And " + more + " more.");
    }
    return lines;
  }

  static String name(Stage stage) {
    return PrintableName.of(stage.name(), stage.id());
  }

  boolean isNow(StageStanding stage) {
    return of.standing().current().filter(now -> now.equals(stage)).isPresent();
  }

  boolean isNext(PoolStanding pool) {
    return of.next().stream().anyMatch(next -> next.rung().standing().equals(pool));
  }

  /** How a stage stands. */
  String state(StageStanding stage) {
    String probe = stage.isProbe() ? " A look ahead, which may fail." : "";
    return switch (stage.state()) {
      case DONE -> "Done." + probe;
      case OPEN -> (isNow(stage) ? "Now here: " : "Open: ") + behind(stage) + probe;
      case LOCKED ->
          "Waits for: "
              + waitsFor(stage)
              + "."
              + (stage.behind() == 0 ? "" : " " + behind(stage))
              + probe;
    };
  }

  private static String behind(StageStanding stage) {
    int rungs = stage.pools().size();
    return stage.behind() + " of " + rungs + (rungs == 1 ? " rung" : " rungs") + " moved on from.";
  }

  private String waitsFor(StageStanding stage) {
    return stage.waitsFor().stream()
        .map(id -> programme.stage(id).map(WayWords::name).orElse(id))
        .collect(Collectors.joining("; "));
  }

  static String name(EntrySide side) {
    return switch (side) {
      case BOTH -> "straight on";
      case POLE -> "pole side";
      case GAP -> "gap side";
    };
  }

  static String step(BackChainStep step) {
    return switch (step) {
      case POLES_ONLY -> "from where the jump will be";
      case WRAP -> "after a wrap round the jump";
      case STRAIGHT -> "over the jump, straight";
    };
  }

  /** All of the picture in sentences. */
  String inWords() {
    List<String> sentences = new ArrayList<>();
    sentences.add("Dog " + of.dog().callName() + ".");
    sentences.add(about());
    sentences.add(aged());
    sentences.add(now());
    sentences.add("Next, in this order.");
    sentences.addAll(next());
    int number = 1;
    for (StageStanding stage : of.standing().stages()) {
      sentences.add("Stage " + number + ", " + name(stage.stage()) + ". " + state(stage));
      RungRow.of(stage).forEach(row -> sentences.add(row(row)));
      number++;
    }
    return String.join(" ", sentences);
  }

  private String row(RungRow row) {
    List<RungRow.Run> runs = row.runs();
    String told =
        runs.stream().limit(RUNS_TOLD_MAX).map(this::run).collect(Collectors.joining("; "));
    String more = runs.size() > RUNS_TOLD_MAX ? "; and more" : "";
    return capital(prefix(row.step()) + name(row.side())) + ": " + told + more + ".";
  }

  private static String prefix(@Nullable BackChainStep step) {
    return step == null ? "" : step(step) + ", ";
  }

  private String run(RungRow.Run run) {
    boolean again =
        run.behind() && (run.mark() == RungMark.LEARNING || run.mark() == RungMark.UNTOUCHED);
    PoolStanding first = run.pools().getFirst();
    PoolStanding last = run.pools().getLast();
    String angles =
        first.pool().rung().side() == EntrySide.BOTH
            ? ""
            : " " + degrees(first) + (run.pools().size() == 1 ? "" : " to " + degrees(last));
    return run.mark().named() + angles + (again ? ", moved on from before" : "");
  }

  private static String degrees(PoolStanding pool) {
    return MasteryWords.degrees(pool.pool().rung().size());
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  /** The sort of node that stands for a stage on the way. */
  WayNode node(StageStanding stage) {
    if (isNow(stage)) {
      return WayNode.NOW;
    }
    return switch (stage.state()) {
      case DONE -> WayNode.DONE;
      case OPEN -> WayNode.OPEN;
      case LOCKED -> WayNode.LOCKED;
    };
  }
}
