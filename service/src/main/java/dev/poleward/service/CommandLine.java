package dev.poleward.service;

import dev.poleward.service.http.HttpSettings;
import dev.poleward.service.http.HttpSettings.Encryption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads settings from a command line and finds every fault at once. For one thread. */
final class CommandLine {

  private static final String TLS_ELSEWHERE = "elsewhere";

  private static final Set<String> KNOWN =
      Set.of(
          "--data",
          "--port",
          "--listen",
          "--tls",
          "--tls-password-file",
          "--kafka",
          "--kafka-port",
          "--host-key-file",
          "--master-key-file",
          "--min-free-mib");

  /** What the command line says, or what is wrong with it. */
  sealed interface Read {}

  /** It is in order. */
  record Understood(Settings settings) implements Read {}

  /** It is not. */
  record Faulty(List<String> faults) implements Read {}

  private final Map<String, String> given = new LinkedHashMap<>();
  private final List<String> faults = new ArrayList<>();

  private CommandLine() {}

  /** Reads the words behind the command. */
  static Read read(List<String> words) {
    CommandLine line = new CommandLine();
    line.take(words);
    Settings settings = line.settings();
    return line.faults.isEmpty() ? new Understood(settings) : new Faulty(List.copyOf(line.faults));
  }

  private void take(List<String> words) {
    for (int i = 0; i < words.size(); i++) {
      String name = words.get(i);
      String value = null;
      int equals = name.indexOf('=');
      if (name.startsWith("--") && equals > 0) {
        value = name.substring(equals + 1);
        name = name.substring(0, equals);
      }
      if (!KNOWN.contains(name)) {
        faults.add(name + " is not known; see: poleward help");
        continue;
      }
      // A value that looks like an option can be given behind an equals sign.
      if (value == null && i + 1 < words.size() && !words.get(i + 1).startsWith("--")) {
        value = words.get(++i);
      }
      if (value == null || value.isBlank()) {
        faults.add(name + " needs a value");
      } else if (given.put(name, value) != null) {
        faults.add(name + " is given twice");
      }
    }
  }

  private Settings settings() {
    Settings settings =
        new Settings(
            path("--data").orElse(Settings.DATA),
            http(),
            text("--kafka"),
            (int) whole("--kafka-port", 0, 65_535, 0),
            path("--host-key-file"),
            path("--master-key-file"),
            whole("--min-free-mib", 0, 1 << 20, Settings.MIN_FREE_BYTES >> 20) << 20);
    if (settings.kafka().isPresent() && given.containsKey("--kafka-port")) {
      faults.add("--kafka-port is for the embedded broker, which --kafka leaves out");
    }
    return settings;
  }

  private HttpSettings http() {
    String host = text("--listen").orElse(Settings.HOST);
    int port = (int) whole("--port", 0, 65_535, Settings.PORT);
    Encryption encryption = encryption();
    if (encryption instanceof Encryption.None && !HttpSettings.isLoopback(host)) {
      faults.add("--listen " + host + " needs --tls: access keys must not travel in the open");
      return new HttpSettings(Settings.HOST, port, encryption);
    }
    return new HttpSettings(host, port, encryption);
  }

  private Encryption encryption() {
    Optional<Path> passwordFile = path("--tls-password-file");
    Optional<String> tls = text("--tls");
    if (tls.isEmpty() || tls.get().equals(TLS_ELSEWHERE)) {
      if (passwordFile.isPresent()) {
        faults.add("--tls-password-file goes with a file in --tls");
      }
      return tls.isEmpty() ? new Encryption.None() : new Encryption.Elsewhere();
    }
    if (passwordFile.isEmpty() && !given.containsKey("--tls-password-file")) {
      faults.add("--tls with a file needs --tls-password-file");
    }
    Optional<Path> keyStore = path("--tls");
    if (keyStore.isPresent() && !Files.isReadable(keyStore.get())) {
      faults.add("--tls " + tls.get() + " cannot be read");
    }
    return new Encryption.Here(
        keyStore.orElse(Settings.DATA), passwordFile.map(this::password).orElse(""));
  }

  private String password(Path file) {
    try {
      return Files.readString(file).strip();
    } catch (IOException e) {
      faults.add("--tls-password-file " + file + " cannot be read");
      return "";
    }
  }

  private Optional<String> text(String name) {
    return Optional.ofNullable(given.get(name));
  }

  private Optional<Path> path(String name) {
    try {
      return text(name).map(Path::of);
    } catch (InvalidPathException e) {
      faults.add(name + " is no path: " + e.getReason());
      return Optional.empty();
    }
  }

  private long whole(String name, long least, long most, long otherwise) {
    String text = given.get(name);
    if (text == null) {
      return otherwise;
    }
    try {
      long value = Long.parseLong(text);
      if (value >= least && value <= most) {
        return value;
      }
    } catch (NumberFormatException e) {
      // Falls through to the fault: no number and a number out of range need the same words.
    }
    faults.add(name + " must be a whole number from " + least + " to " + most + ", not " + text);
    return otherwise;
  }
}
