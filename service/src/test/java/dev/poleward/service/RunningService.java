package dev.poleward.service;

import static io.restassured.config.DecoderConfig.decoderConfig;
import static io.restassured.config.EncoderConfig.encoderConfig;

import dev.poleward.service.http.ContractFilter;
import dev.poleward.service.http.HttpSettings;
import dev.poleward.service.http.HttpSettings.Encryption;
import io.restassured.RestAssured;
import io.restassured.config.RestAssuredConfig;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * The real service in this JVM, broker and all, on a folder and a free port. Requests may come from
 * many threads; one starts and stops it.
 */
public final class RunningService implements AutoCloseable {

  private static final RestAssuredConfig CLIENT =
      RestAssuredConfig.config()
          .decoderConfig(decoderConfig().defaultContentCharset("UTF-8"))
          .encoderConfig(
              encoderConfig()
                  .defaultContentCharset("UTF-8")
                  .appendDefaultContentCharsetToContentTypeIfUndefined(false)
                  .encodeContentTypeAs(Club.EVENT, ContentType.TEXT)
                  .encodeContentTypeAs(Club.BATCH, ContentType.TEXT));

  /** Ahead of all times that tests speak of, on whatever day they run. */
  private static final Clock CLOCK = Clock.offset(Clock.systemUTC(), Duration.ofDays(3_650));

  private final Settings settings;
  private final Composition composition;
  private final AtomicInteger clubs = new AtomicInteger();

  private RunningService(Settings settings) {
    this.settings = settings;
    this.composition = Composition.start(settings, CLOCK, new SecureRandom()::nextBytes);
  }

  /** Starts on a folder that may hold data already. */
  public static RunningService on(Path data) {
    return with(data, new HttpSettings(Settings.HOST, 0, new Encryption.None()));
  }

  /** Starts on a folder, and listens as told. */
  static RunningService with(Path data, HttpSettings http) {
    return new RunningService(
        new Settings(data, http, Optional.empty(), 0, Optional.empty(), Optional.empty(), 0));
  }

  /** What the service takes for now. */
  public Instant now() {
    return CLOCK.instant();
  }

  /** The port on loopback that it answers on. */
  public int port() {
    return composition.port();
  }

  /** What it answers, as {@code GET /v1/clubs/{club}}. */
  public List<String> routes() {
    return composition.routes();
  }

  /** The key that opens every club. */
  public String hostKey() {
    try {
      return Files.readString(settings.hostKey()).strip();
    } catch (IOException e) {
      throw new UncheckedIOException("the first start writes the host key", e);
    }
  }

  /** A request of somebody without a key, its answer held to the contract. */
  public RequestSpecification stranger() {
    return RestAssured.given()
        .config(CLIENT)
        .baseUri("http://" + Settings.HOST)
        .port(port())
        .urlEncodingEnabled(false)
        .filter(new ContractFilter());
  }

  /** A request of whoever has that key, its answer held to the contract. */
  public RequestSpecification as(String accessKey) {
    return stranger().header("Authorization", "Bearer " + accessKey);
  }

  /** Registers a club that no other test knows. */
  public Club newClub() {
    String id = "club-" + clubs.incrementAndGet();
    String accessKey =
        as(hostKey())
            .contentType(ContentType.JSON)
            .body(
                """
                {"id": "registered-%s", "club": "%s", "name": "Saltmarsh Weavers", \
                "timeZone": "Europe/Lisbon", "time": "2026-01-10T09:00:00Z"}\
                """
                    .formatted(id, id))
            .post("/v1/clubs")
            .then()
            .statusCode(201)
            .extract()
            .path("accessKey");
    return new Club(this, id, accessKey);
  }

  @Override
  public void close() {
    composition.close();
  }
}
