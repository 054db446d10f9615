package dev.poleward.service;

import dev.poleward.service.CommandLine.Faulty;
import dev.poleward.service.CommandLine.Understood;
import dev.poleward.service.access.HostKey;
import dev.poleward.service.access.MasterKey;
import dev.poleward.service.demo.DemoClub;
import dev.poleward.service.http.HttpSettings;
import dev.poleward.service.http.HttpSettings.Encryption;
import dev.poleward.service.journal.CannotStart;
import dev.poleward.service.journal.DataFolder;
import dev.poleward.service.journal.JournalException;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;

/** The program: reads the first word of the command line and does what it says. */
public final class Poleward {

  private static final int WRONG_WORDS = 2;
  private static final int CANNOT_START = 1;
  private static final int PRACTICE_ROUNDS = 2;

  private Poleward() {}

  /**
   * Runs a command.
   *
   * <p>Exit codes: 0 done or stopped in order, 1 cannot start, 2 the command line is wrong.
   */
  public static void main(String[] args) throws InterruptedException {
    // Pictures are painted into memory; without this a desktop would show us among its programs.
    System.setProperty("java.awt.headless", "true");
    List<String> words = Arrays.asList(args);
    String command = words.isEmpty() ? "" : words.getFirst();
    switch (command) {
      case "serve" -> serve(words.subList(1, words.size()));
      case "demo" -> demo(words.subList(1, words.size()));
      case "rehearse" -> rehearse();
      case "make-keys" -> makeKeys(words.subList(1, words.size()));
      case "help", "--help", "-h" -> System.out.print(Help.TEXT);
      default -> {
        System.err.print(Help.TEXT);
        System.exit(WRONG_WORDS);
      }
    }
  }

  private static void serve(List<String> words) throws InterruptedException {
    switch (CommandLine.read(words)) {
      case Faulty(List<String> faults) -> refuse(faults, WRONG_WORDS);
      case Understood(Settings settings) -> {
        start(settings);
        awaitStop();
      }
    }
  }

  private static void demo(List<String> words) throws InterruptedException {
    switch (CommandLine.read(words)) {
      case Faulty(List<String> faults) -> refuse(faults, WRONG_WORDS);
      case Understood(Settings settings)
          when settings.http().encryption() instanceof Encryption.Here ->
          refuse(
              List.of("the demo speaks plain HTTP on this machine; leave --tls out"), WRONG_WORDS);
      case Understood(Settings settings) -> {
        Composition service = start(settings);
        show(settings, service);
        awaitStop();
      }
    }
  }

  private static void show(Settings settings, Composition service) throws InterruptedException {
    try (DemoClub club =
        new DemoClub(
            address(settings, service),
            settings.data().resolve("demo.key"),
            DemoClub.SEASON_WEEKS,
            System.out)) {
      club.show(Files.readString(settings.hostKey()).strip(), Clock.systemUTC());
    } catch (IOException e) {
      System.err.println("poleward: the demo could not be shown: " + e.getMessage());
    }
  }

  /**
   * The demo on a folder of its own, shown to nobody. The build does it once: what is loaded here
   * is kept for quick starts, and a service that cannot show its demo is not built.
   */
  private static void rehearse() throws InterruptedException {
    try {
      Path folder = Files.createTempDirectory("poleward-rehearsal");
      Settings settings =
          new Settings(
              folder.resolve("data"),
              new HttpSettings(Settings.HOST, 0, new Encryption.None()),
              Optional.empty(),
              0,
              Optional.empty(),
              Optional.empty(),
              0);
      SecureRandom random = new SecureRandom();
      try (Composition service = Composition.start(settings, Clock.systemUTC(), random::nextBytes);
          DemoClub club =
              new DemoClub(
                  address(settings, service),
                  folder.resolve("demo.key"),
                  DemoClub.SHORT_SEASON_WEEKS,
                  nowhere())) {
        club.show(Files.readString(settings.hostKey()).strip(), Clock.systemUTC());
        club.practise(Clock.systemUTC(), PRACTICE_ROUNDS);
      }
      FolderRemoval.remove(folder);
    } catch (IOException e) {
      refuse(List.of("the rehearsal failed: " + e.getMessage()), CANNOT_START);
    }
  }

  private static PrintStream nowhere() {
    return new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
  }

  private static URI address(Settings settings, Composition service) {
    return URI.create("http://" + settings.http().host() + ":" + service.port());
  }

  private static void makeKeys(List<String> words) {
    switch (CommandLine.read(words)) {
      case Faulty(List<String> faults) -> refuse(faults, WRONG_WORDS);
      case Understood(Settings settings) -> {
        SecureRandom random = new SecureRandom();
        try (DataFolder _ = DataFolder.open(settings.data())) {
          HostKey.open(settings.hostKey(), random::nextBytes);
          MasterKey.open(settings.masterKey(), MasterKey.WhenMissing.CREATE);
          System.out.println(settings.hostKey());
          System.out.println(settings.masterKey());
        } catch (CannotStart e) {
          refuse(List.of(String.valueOf(e.getMessage())), CANNOT_START);
        }
      }
    }
  }

  private static void refuse(List<String> why, int exitCode) {
    why.forEach(each -> System.err.println("poleward: " + each));
    // At once: nothing is open any more, and a class archive of half a start is of no use.
    Runtime.getRuntime().halt(exitCode);
  }

  private static Composition start(Settings settings) {
    SecureRandom random = new SecureRandom();
    ClosingInOrder closing = new ClosingInOrder();
    stopInOrder(closing);
    Composition service;
    try {
      service = Composition.start(settings, Clock.systemUTC(), random::nextBytes, closing);
    } catch (CannotStart e) {
      refuse(List.of(String.valueOf(e.getMessage())), CANNOT_START);
      throw e;
    } catch (JournalException e) {
      refuse(List.of("the journal cannot be used: " + e.getMessage()), CANNOT_START);
      throw e;
    }
    String scheme = settings.http().encryption() instanceof Encryption.Here ? "https" : "http";
    System.err.println(
        "poleward: ready on %s://%s:%d".formatted(scheme, settings.http().host(), service.port()));
    return service;
  }

  /** From now on a signal stops in order what is started, or what is starting. */
  private static void stopInOrder(ClosingInOrder closing) {
    Runtime.getRuntime()
        .addShutdownHook(
            Thread.ofPlatform()
                .name("stop")
                .unstarted(
                    () -> {
                      closing.close();
                      // The JVM would call a stop by signal a failure; this one was in order.
                      Runtime.getRuntime().halt(0);
                    }));
  }

  private static void awaitStop() throws InterruptedException {
    new CountDownLatch(1).await();
  }
}
