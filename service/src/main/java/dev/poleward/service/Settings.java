package dev.poleward.service;

import dev.poleward.service.http.HttpSettings;
import java.nio.file.Path;
import java.util.Optional;

/**
 * How the service is to run.
 *
 * @param data folder that holds all its data
 * @param http where it listens
 * @param kafka an existing cluster, {@code host:port,…}; the embedded broker when empty
 * @param kafkaPort port of the embedded broker on loopback; 0 for any free one
 * @param hostKeyFile where the host key is; below {@code data} when empty
 * @param masterKeyFile where the master key of people's keys is; below {@code data} when empty
 * @param minFreeBytes room on the disk below which writes are refused
 */
record Settings(
    Path data,
    HttpSettings http,
    Optional<String> kafka,
    int kafkaPort,
    Optional<Path> hostKeyFile,
    Optional<Path> masterKeyFile,
    long minFreeBytes) {

  static final Path DATA = Path.of("data");
  static final String HOST = "127.0.0.1";
  static final int PORT = 8080;
  static final long MIN_FREE_BYTES = 512L << 20;

  Path hostKey() {
    return hostKeyFile.orElse(data.resolve("host.key"));
  }

  Path masterKey() {
    return masterKeyFile.orElse(data.resolve("master.key"));
  }

  Path journal() {
    return data.resolve("journal");
  }
}
