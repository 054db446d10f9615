package dev.poleward.service;

import dev.poleward.service.access.AccessKeys;
import dev.poleward.service.access.ForgottenPeople;
import dev.poleward.service.access.HostKey;
import dev.poleward.service.access.PersonKeys;
import dev.poleward.service.access.Randomness;
import dev.poleward.service.codec.EventCodec;
import dev.poleward.service.codec.Upcasters;
import dev.poleward.service.contract.Contract;
import dev.poleward.service.http.HttpServer;
import dev.poleward.service.journal.CannotStart;
import dev.poleward.service.journal.DataFolder;
import dev.poleward.service.journal.Journal;
import dev.poleward.service.projection.CatchUp;
import dev.poleward.service.projection.EndOfPartition;
import dev.poleward.service.projection.Projection;
import dev.poleward.service.projection.RowClubReader;
import dev.poleward.service.projection.RowSettings;
import dev.poleward.service.projection.RowStore;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.atomic.AtomicBoolean;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The service put together, in the one place that knows all its parts. For the thread that starts
 * and stops it.
 */
final class Composition implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(Composition.class);

  /** Longest wait for a look at the journal or a person's key while a request is under way. */
  private static final Duration LOOK_MAX = Duration.ofSeconds(5);

  /** Longest wait at the start for the topic of people's keys. */
  private static final Duration KEYS_MAX = Duration.ofSeconds(30);

  /** Longest wait for the rows to catch up, a rebuild of everything included. */
  private static final Duration REBUILD_MAX = Duration.ofHours(12);

  private static final Duration LOOK_AGAIN = Duration.ofSeconds(1);

  private static final int FOLD_THREADS_MAX = 4;

  private final ClosingInOrder closing;
  private final HttpServer http;
  private final AtomicBoolean caughtUp;

  private Composition(ClosingInOrder closing, HttpServer http, AtomicBoolean caughtUp) {
    this.closing = closing;
    this.http = http;
    this.caughtUp = caughtUp;
  }

  /**
   * Starts the service; returns once it is ready.
   *
   * @throws CannotStart when it cannot, with words for an operator
   */
  static Composition start(Settings settings, Clock clock, Randomness randomness) {
    return start(settings, clock, randomness, new ClosingInOrder());
  }

  /**
   * Starts the service as {@link #start(Settings, Clock, Randomness)} does.
   *
   * @param closing whoever closes it, on whichever thread, stops the start or what was started
   */
  static Composition start(
      Settings settings, Clock clock, Randomness randomness, ClosingInOrder closing) {
    try {
      return open(settings, clock, randomness, closing);
    } catch (RuntimeException e) {
      closing.close();
      throw e;
    }
  }

  private static Composition open(
      Settings settings, Clock clock, Randomness randomness, ClosingInOrder closing) {
    CompletableFuture<Contract> loading = CompletableFuture.supplyAsync(Contract::load);
    DataFolder data = closing.add(DataFolder.open(settings.data()));
    HostKey hostKey = hostKey(settings, randomness);
    RowStore rows = closing.add(RowStore.open(data.part("rows"), RowSettings.DEFAULT));
    JournalSide side = JournalSide.open(settings, data, Projection.appliedIn(rows), closing);

    refuseOtherJournal(rows, side.identity(), data.path());
    refuseShorterJournal(side.journal().ends(LOOK_MAX), Projection.appliedIn(rows));
    PrometheusMeterRegistry metrics = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    Journal journal = new MeteredJournal(side.journal(), metrics);
    EventCodec codec = new EventCodec(Upcasters.NONE);
    int shares =
        Math.min(FOLD_THREADS_MAX, Math.max(1, Runtime.getRuntime().availableProcessors()));
    Projection projection = closing.add(new Projection(journal, rows, codec, shares));
    RowClubReader clubs = new RowClubReader(rows, codec, catchUp(settings, journal, projection));
    PersonKeys personKeys =
        closing.add(
            new PersonKeys(
                side.personKeys(),
                side.masterKey(),
                new ForgottenPeople(clubs, LOOK_MAX),
                randomness,
                LOOK_MAX));
    personKeys.start(KEYS_MAX);
    AtomicBoolean caughtUp = new AtomicBoolean();
    ProgressListener progress = new ProgressListener(personKeys, metrics, caughtUp::get);
    projection.start(progress);
    Gauges.register(metrics, journal, projection);

    HttpServer http =
        closing.add(
            HttpServer.start(
                settings.http(),
                new HttpServer.Parts(
                    loaded(loading),
                    codec,
                    journal,
                    projection,
                    clubs,
                    new AccessKeys(clubs, hostKey, randomness, LOOK_MAX),
                    personKeys,
                    clock,
                    randomness,
                    metrics,
                    () -> caughtUp.get() && !progress.hasFailed())));
    Composition composition = new Composition(closing, http, caughtUp);
    composition.becomeReady(journal, projection, personKeys, progress, clock);
    return composition;
  }

  private static void refuseOtherJournal(RowStore rows, String identity, Path data) {
    if (!rows.belongTo(identity)) {
      throw new CannotStart(
          "%s holds what was made from another journal. Start with the journal it belongs to, or with another folder."
              .formatted(data));
    }
  }

  /**
   * Refuses a journal that has lost what was acknowledged.
   *
   * @param ends where its partitions end
   * @param applied what these rows hold of it, for each partition the next offset
   */
  static void refuseShorterJournal(long[] ends, long[] applied) {
    for (int partition = 0; partition < ends.length; partition++) {
      if (ends[partition] < applied[partition]) {
        throw new CannotStart(
            "Partition %d of the journal ends at %d, but %d records were acknowledged. Restore what is missing."
                .formatted(partition, ends[partition], applied[partition]));
      }
    }
  }

  /** Nodes of a cluster share one host key; each would make its own and know no other's. */
  private static HostKey hostKey(Settings settings, Randomness randomness) {
    if (settings.kafka().isPresent() && !Files.exists(settings.hostKey())) {
      throw new CannotStart(
          "The host key %s is missing. Make one with poleward make-keys and copy it to all nodes."
              .formatted(settings.hostKey()));
    }
    return HostKey.open(settings.hostKey(), randomness);
  }

  private static CatchUp catchUp(Settings settings, Journal journal, Projection projection) {
    return settings.kafka().isPresent()
        ? new EndOfPartition(
            journal, projection, asking -> Thread.ofVirtual().name("ends").start(asking))
        : CatchUp.SOLE_NODE;
  }

  private static Contract loaded(CompletableFuture<Contract> loading) {
    try {
      return loading.join();
    } catch (CompletionException e) {
      throw new IllegalStateException("the contract could not be read", e.getCause());
    }
  }

  private void becomeReady(
      Journal journal,
      Projection projection,
      PersonKeys personKeys,
      ProgressListener progress,
      Clock clock) {
    long[] ends = journal.ends(LOOK_MAX);
    Instant latest = clock.instant().plus(REBUILD_MAX);
    while (!projection.awaitAll(ends, LOOK_AGAIN)) {
      if (progress.hasFailed()) {
        throw new CannotStart("The journal could not be applied; the log says why.");
      }
      if (clock.instant().isAfter(latest)) {
        throw new CannotStart("The journal could not be read to its end within 12 hours.");
      }
    }
    caughtUp.set(true);
    personKeys.sweepAll();
    LOG.info("Ready on port {}", http.port());
  }

  /** The port it listens on. */
  int port() {
    return http.port();
  }

  /** What it answers, as {@code GET /v1/clubs/{club}}. */
  List<String> routes() {
    return http.routes();
  }

  /** Stops in order: no more requests, then nothing more applied, then the journal. */
  @Override
  public void close() {
    caughtUp.set(false);
    closing.close();
  }
}
