package dev.poleward.load;

import dev.poleward.load.drill.Faults;
import dev.poleward.load.drill.FolderSearch;
import dev.poleward.load.drill.ForgottenPerson;
import dev.poleward.load.drill.Traces;
import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.Report;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.load.kafka.WrappedKeys;
import dev.poleward.load.node.Node;
import dev.poleward.load.node.ScratchFolder;
import dev.poleward.load.wire.ClubClient;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/**
 * Forgets a person, waits as long as the service says, and looks for what is left: the name in any
 * file, and any piece of the wrapped key. Before that it looks for the same and must find the key,
 * so that a search that finds nothing means something.
 */
public final class ForgettingDrill {

  private static final Duration LOOK_EVERY = Duration.ofSeconds(2);

  private final Node node;
  private final Faults faults;

  private ForgettingDrill(Node node, Faults faults) {
    this.node = node;
    this.faults = faults;
  }

  public static void main(String[] args) throws IOException, InterruptedException {
    Arguments arguments = new Arguments(args);
    String word = arguments.text("word", "Quillhaven7R2kX9");
    TimeLimit.set(arguments.limit(15));
    boolean keep = arguments.keep();
    String settings = arguments.settings();
    Faults faults = new Faults();
    try (ScratchFolder scratch = new ScratchFolder("forgetting-drill", keep);
        Node node = Node.start(scratch.resolve("data"))) {
      Report report =
          new Report(
              "ForgettingDrill",
              settings,
              "promised s",
              "key gone from all files after s",
              "files looked into",
              "result");
      node.awaitReady();
      new ForgettingDrill(node, faults).run(word, report);
      report.print();
      if (faults.isEmpty()) {
        scratch.wentWell();
      }
    }
    faults.endProgram();
  }

  private void run(String word, Report report) throws IOException, InterruptedException {
    String accessKey = ClubClient.register(node.port(), node.hostKey(), ForgottenPerson.CLUB);
    try (ClubClient client = new ClubClient(node.port(), ForgottenPerson.CLUB, accessKey)) {
      ForgottenPerson person = new ForgottenPerson(client, word);
      person.register();
      faults.unless(person.readable().size() == 4, "read only at %s", person.readable());
      Map<String, String> keys = WrappedKeys.read(node.kafka());
      List<String> toBeGone = ForgottenPerson.keysOfForgotten(keys);
      String other = ForgottenPerson.keyOfOther(keys);
      Traces keyTraces = new Traces();
      toBeGone.forEach(key -> keyTraces.key(key, other));
      List<String> before = FolderSearch.find(node.data(), keyTraces);
      faults.unless(!before.isEmpty(), "the key is found nowhere while it must be there");
      Report.note("%d keys; before the forgetting in %s", toBeGone.size(), before);

      Instant forgotten = Instant.now();
      Instant goneBy = person.forget();
      person.sendLate(faults);
      faults.unless(person.readable().isEmpty(), "still read at %s", person.readable());
      double goneAfter = awaitGone(keyTraces, forgotten, goneBy);
      ForgottenPerson.sleepUntil(goneBy);

      node.stop();
      nothingLeft(person.traces(), "the name");
      nothingLeft(keyTraces, "the key");
      List<String> ofOther = FolderSearch.find(node.data(), new Traces().key(other, ""));
      faults.unless(!ofOther.isEmpty(), "the key of somebody else is gone too");
      report.row(
          Duration.between(forgotten, goneBy).toSeconds(),
          "%.0f".formatted(goneAfter),
          FolderSearch.files(node.data()).size(),
          faults.isEmpty() ? "nothing left" : "see the faults");
    }
  }

  private double awaitGone(Traces traces, Instant forgotten, Instant goneBy)
      throws IOException, InterruptedException {
    while (Instant.now().isBefore(goneBy)) {
      if (FolderSearch.find(node.data(), traces).isEmpty()) {
        return Duration.between(forgotten, Instant.now()).toMillis() / 1_000.0;
      }
      Thread.sleep(LOOK_EVERY);
    }
    return Double.NaN;
  }

  /** The service's own words count too: they lie beside its data. */
  private void nothingLeft(Traces traces, String what) throws IOException {
    for (Path place : List.of(node.data(), node.log())) {
      List<String> found = FolderSearch.find(place, traces);
      faults.unless(found.isEmpty(), "%s is in %s", what, found);
    }
  }
}
