package dev.poleward.load.node;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;

/**
 * The two secrets that all nodes of a cluster share, made by {@code poleward make-keys}.
 *
 * @param folder where they are
 */
public record SharedKeys(Path folder) {

  private static final Duration MADE_MAX = Duration.ofMinutes(5);

  /** Makes them. */
  public static SharedKeys make(Path folder) throws IOException {
    ChildProcess making =
        ChildProcess.start(
            folder.resolveSibling(folder.getFileName() + ".log"),
            List.of(Checkout.start().toString(), "make-keys", "--data", folder.toString()));
    if (!making.ends(MADE_MAX)) {
      throw new IllegalStateException("no keys were made" + making.logged());
    }
    return new SharedKeys(folder);
  }

  private Path hostKeyFile() {
    return folder.resolve("host.key");
  }

  /** The key that registers clubs. */
  public String hostKey() throws IOException {
    return Files.readString(hostKeyFile()).strip();
  }

  /** Words on the command line of a node on a cluster. */
  public List<String> options(String kafka) {
    return List.of(
        "--kafka",
        kafka,
        "--host-key-file",
        hostKeyFile().toString(),
        "--master-key-file",
        folder.resolve("master.key").toString());
  }
}
