package dev.poleward.service.http;

import dev.poleward.service.access.AccessKeys;
import dev.poleward.service.access.Forgotten;
import dev.poleward.service.access.HostKey;
import dev.poleward.service.access.MasterKey;
import dev.poleward.service.access.PersonKeys;
import dev.poleward.service.contract.Contract;
import dev.poleward.service.journal.MemoryJournal;
import dev.poleward.service.journal.MemoryPersonKeyTopic;
import dev.poleward.service.journal.Place;
import dev.poleward.service.projection.Applied;
import dev.poleward.service.projection.ClubReader;
import dev.poleward.service.projection.HistoryEntries;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What routes are made of, for reads of rows without a server or a broker. For one thread; the
 * routes may be asked by many.
 */
final class InMemoryParts implements AutoCloseable {

  private static final Duration WAIT = Duration.ofSeconds(5);

  /** Nothing is written through these routes. */
  private static final Applied NOTHING_APPLIED =
      new Applied() {
        @Override
        public boolean await(List<Place> places, Duration wait) {
          return false;
        }

        @Override
        public Effect effect(String club, String eventId, Place place, byte[] contentHash) {
          throw new UnsupportedOperationException("these routes are read only");
        }
      };

  private final Contract contract = Contract.load();
  private final Set<String> forgotten = ConcurrentHashMap.newKeySet();
  private final PersonKeys personKeys;
  private final HostKey hostKey;
  private final String hostKeyText;

  InMemoryParts(Path folder) {
    Forgotten asTold = (club, person) -> forgotten.contains(club + '/' + person);
    personKeys =
        new PersonKeys(
            new MemoryPersonKeyTopic(),
            MasterKey.open(folder.resolve("master.key"), MasterKey.WhenMissing.CREATE),
            asTold,
            new Random(5)::nextBytes,
            WAIT);
    personKeys.start(WAIT);
    hostKey = HostKey.open(folder.resolve("host.key"), new Random(6)::nextBytes);
    try {
      hostKeyText = Files.readString(folder.resolve("host.key")).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Routes over the rows that {@code clubs} reads, on a day after all of them. */
  Routes routes(ClubReader clubs) {
    return routes(clubs, Clock.fixed(Instant.parse("2026-06-01T00:00:00Z"), ZoneOffset.UTC));
  }

  /** Routes over the rows that {@code clubs} reads. */
  Routes routes(ClubReader clubs, Clock clock) {
    return HttpServer.routes(
        new HttpServer.Parts(
            contract,
            HistoryEntries.CODEC,
            new MemoryJournal(),
            NOTHING_APPLIED,
            clubs,
            new AccessKeys(clubs, hostKey, new Random(7)::nextBytes, WAIT),
            personKeys,
            clock,
            new Random(8)::nextBytes,
            new PrometheusMeterRegistry(PrometheusConfig.DEFAULT),
            () -> true));
  }

  PersonKeys personKeys() {
    return personKeys;
  }

  void forget(String club, String person) {
    forgotten.add(club + '/' + person);
    personKeys.forget(club, person);
  }

  /** What opens every club. */
  String hostKey() {
    return hostKeyText;
  }

  @Override
  public void close() {
    personKeys.close();
  }
}
