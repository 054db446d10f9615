package dev.poleward.load;

import dev.poleward.load.drill.Faults;
import dev.poleward.load.drill.KillRounds;
import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.Report;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.load.node.ScratchFolder;
import java.io.IOException;

/**
 * Kills the service again and again while phones write into it. All that was answered must be
 * there, once, soon; and the record must be the one that the same events make anywhere else.
 */
public final class KillDrill {

  private KillDrill() {}

  public static void main(String[] args) throws IOException, InterruptedException {
    Arguments arguments = new Arguments(args);
    boolean mixed = arguments.oneOf("mode", "mixed", "batches").equals("mixed");
    KillRounds.Plan plan =
        new KillRounds.Plan(
            arguments.whole("rounds", 10, 1),
            arguments.whole("singleWriters", mixed ? 4 : 0, 0),
            arguments.whole("batchWriters", mixed ? 4 : 2, 0),
            arguments.whole("batch", mixed ? 50 : 1_000, 2),
            mixed,
            arguments.whole("readyMillisMax", 4_000, 1),
            arguments.whole("seed", 1, 0));
    TimeLimit.set(arguments.limit(30));
    boolean keep = arguments.keep();
    String settings = arguments.settings();
    Faults faults = new Faults();
    try (ScratchFolder scratch = new ScratchFolder("kill-drill", keep)) {
      Report report =
          new Report(
              "KillDrill",
              settings,
              "round",
              "ready ms",
              "answered",
              "unanswered",
              "there",
              "result");
      new KillRounds(plan, scratch, faults, report).run();
      report.print();
      if (faults.isEmpty()) {
        scratch.wentWell();
      }
    }
    faults.endProgram();
  }
}
