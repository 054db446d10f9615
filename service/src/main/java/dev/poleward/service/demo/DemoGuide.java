package dev.poleward.service.demo;

import java.io.PrintStream;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;

/** Says what there is to see in the demo, as lines for a shell. */
final class DemoGuide {

  private static final String JSON = "application/json";

  private final URI service;
  private final String club;
  private final Path keyFile;
  private final List<Sight> sights;

  DemoGuide(URI service, String club, Path keyFile, List<Sight> sights) {
    this.service = service;
    this.club = club;
    this.keyFile = keyFile.toAbsolutePath().normalize();
    this.sights = List.copyOf(sights);
  }

  void print(PrintStream out) {
    out.println();
    out.println(
        "All of it can be read, by somebody who has the key of the club. In another terminal:");
    out.println();
    out.printf("  api='%s'%n", service.resolve("/v1/clubs/" + club));
    out.printf("  demo='%s'%n", keyFile.getParent());
    out.printf("  auth=\"Authorization: Bearer $(cat \"$demo/%s\")\"%n", keyFile.getFileName());
    for (Sight sight : sights) {
      out.printf("%n  # %s%n  %s%n", sight.what(), command(sight));
    }
    out.println();
    out.printf("In a browser: %s explains the API.%n", service.resolve("/docs"));
    out.println("Stop with Ctrl-C; start again to find everything as it was.");
  }

  private String command(Sight sight) {
    StringBuilder line = new StringBuilder("curl -sS");
    if (sight.needsKey()) {
      line.append(" -H \"$auth\"");
    }
    if (!sight.form().equals(JSON) && sight.needsKey()) {
      line.append(" -H 'Accept: ").append(sight.form()).append('\'');
    }
    if (sight.file().isEmpty()) {
      // Or the prompt of the shell would stand behind the answer.
      line.append(" -w '\\n'");
    } else {
      line.append(" -o \"$demo/").append(sight.file()).append('"');
    }
    line.append(" \"");
    line.append(sight.needsKey() ? sight.pathIn("$api") : service.resolve(sight.pathIn("")));
    return line.append('"').toString();
  }
}
