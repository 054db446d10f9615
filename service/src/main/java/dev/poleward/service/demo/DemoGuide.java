package dev.poleward.service.demo;

import java.io.PrintStream;
import java.net.URI;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** Says what there is to see in the demo. */
final class DemoGuide {

  private final URI service;
  private final Path keyFile;
  private final PrintStream out;

  DemoGuide(URI service, Path keyFile, PrintStream out) {
    this.service = service;
    this.keyFile = keyFile;
    this.out = out;
  }

  void print() {
    Map<String, String> sights = new LinkedHashMap<>();
    sights.put("the dogs", "dogs");
    sights.put("Juniper's reps, each with what stood when it was run", "dogs/juniper/reps?limit=3");
    sights.put("one session as it stands", "sessions/s-3-1");
    sights.put("who is in the class", "classes/evening");
    sights.put("the record as it was written", "events?after=0&limit=5");
    sights.put("its fingerprint", "digest");
    out.println();
    out.println("Look around:");
    out.println();
    out.printf("  KEY=$(cat '%s')%n", keyFile.toAbsolutePath());
    sights.forEach(
        (what, path) -> {
          out.printf("%n  # %s%n", what);
          out.printf(
              "  curl -s -H \"Authorization: Bearer $KEY\" '%s'%n",
              service.resolve("/v1/clubs/" + DemoEvents.CLUB + "/" + path));
        });
    out.printf("%n  # the same reps as a table%n");
    out.printf(
        "  curl -s -H \"Authorization: Bearer $KEY\" -H 'Accept: text/csv' '%s'%n",
        service.resolve("/v1/clubs/" + DemoEvents.CLUB + "/dogs/juniper/reps"));
    out.printf("%n  # the contract%n  curl -s '%s'%n%n", service.resolve("/openapi.yaml"));
    out.println("Stop with Ctrl-C; start again to find everything as it was.");
  }
}
