package dev.poleward.load.node;

import java.nio.file.Files;
import java.nio.file.Path;

/** Where this project lies. */
final class Checkout {

  private static final String START = "service/bin/poleward";

  private Checkout() {}

  /** The script that starts the service. */
  static Path start() {
    Path here = Path.of("").toAbsolutePath();
    for (Path folder = here; folder != null; folder = folder.getParent()) {
      if (Files.isExecutable(folder.resolve(START))) {
        return folder.resolve(START);
      }
    }
    throw new IllegalStateException("no " + START + " above " + here);
  }
}
