package dev.poleward.service.http;

import static dev.poleward.service.http.Said.rep;
import static dev.poleward.service.http.Said.session;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a body may be before anybody asks what it means. */
@ExtendWith(SharedService.class)
class BodiesTest {

  private static final int BYTES_MAX = 4 << 20;

  private final Club club;

  BodiesTest(Club club) {
    this.club = club;
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** An event with spaces behind it, up to a length. */
  private static byte[] padded(int length) {
    byte[] event = bytes(session("s-1", "18:00:00"));
    byte[] padded = Arrays.copyOf(event, length);
    Arrays.fill(padded, event.length, length, (byte) ' ');
    return padded;
  }

  @Test
  void fourMebibytesAreRead() {
    assertThat(RawHttp.post(club, Club.EVENT, padded(BYTES_MAX)).status()).isEqualTo(201);
    assertThat(RawHttp.postInChunks(club, Club.EVENT, padded(BYTES_MAX), 1 << 16).status())
        .isEqualTo(200);
  }

  @Test
  void oneByteMoreIsTooLarge() {
    RawHttp said = RawHttp.post(club, Club.EVENT, padded(BYTES_MAX + 1));
    RawHttp unsaid = RawHttp.postInChunks(club, Club.EVENT, padded(BYTES_MAX + 1), 1 << 16);

    assertThat(said.status()).isEqualTo(413);
    assertThat(unsaid.status()).isEqualTo(413);
    assertThat(said.text()).contains("urn:poleward:problem:too-large").contains("4 MiB");
    assertThat(unsaid.text()).isEqualTo(said.text());
  }

  /** The answer must come through even to somebody who is still sending. */
  @ParameterizedTest
  @ValueSource(ints = {8 << 20, 24 << 20})
  void muchMoreIsTooLargeToo(int length) {
    assertThat(RawHttp.post(club, Club.EVENT, padded(length)).status()).isEqualTo(413);
    assertThat(RawHttp.postInChunks(club, Club.EVENT, padded(length), 1 << 16).status())
        .isEqualTo(413);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"id\":|it ends too early",
        "{\"id\":1}}|is not JSON at line 1, column 9",
        "{\"id\":1} {}|goes on after its end",
        "{\"id\":1,\"id\":2}|line 1",
        "{'id':1}|is not JSON",
        "{\"id\":NaN}|is not JSON",
        "{\"id\":01}|is not JSON",
        "{\"id\":1e99999}|beyond all bounds",
        "{\"id\":\"\\ud800\"}|half a surrogate pair",
        "{\"\\udc00\":1}|surrogate",
        "``|is empty"
      })
  void whatIsNoStrictJsonIsRefusedWithThePlace(String body, String sentence) {
    for (String type : new String[] {Club.EVENT, Club.BATCH}) {
      RawHttp answer = RawHttp.post(club, type, bytes(body));

      assertThat(answer.status()).isEqualTo(400);
      assertThat(answer.text()).contains("\"pointer\":\"\"").contains(sentence);
    }
  }

  @Test
  void whatIsNotUtf8IsRefused() {
    byte[] latin =
        session("s-1", "18:00:00")
            .replace("field-notes", "é")
            .getBytes(StandardCharsets.ISO_8859_1);
    byte[] wide = session("s-1", "18:00:00").getBytes(StandardCharsets.UTF_16);

    assertThat(RawHttp.post(club, Club.EVENT, latin).text()).contains("is not UTF-8");
    assertThat(RawHttp.post(club, Club.EVENT, wide).text()).contains("is not UTF-8");
  }

  @ParameterizedTest
  @ValueSource(ints = {65, 100_000})
  void deepNestingIsRefused(int depth) {
    RawHttp answer = RawHttp.post(club, Club.BATCH, bytes("[".repeat(depth) + "]".repeat(depth)));

    assertThat(answer.status()).isEqualTo(400);
    assertThat(answer.text()).contains("nested deeper than 64 levels");
  }

  /** Nobody who is turned away at the door has been read, and yet must learn why. */
  @Test
  void refusalsComeThroughWhateverIsSent() {
    Club stranger = club.as("pw_" + club.id() + "_nobody_" + "x".repeat(40));

    assertThat(RawHttp.post(stranger, Club.EVENT, padded(6 << 20)).status()).isEqualTo(401);
    assertThat(RawHttp.post(club, "text/plain", padded(6 << 20)).status()).isEqualTo(415);
  }

  /** Who asks first need not send what nobody reads. */
  @Test
  void whoAsksFirstIsToldAtOnce() {
    String request =
        """
        POST %s HTTP/1.1
        Host: localhost
        Authorization: Bearer %s
        Content-Type: application/cloudevents+json
        Content-Length: 5000000
        Expect: 100-continue

        """
            .formatted(club.path("/events"), club.accessKey())
            .replace("\n", "\r\n");

    assertThat(RawHttp.exchange(club.service().port(), request).status()).isEqualTo(413);
  }

  @Test
  void oneBodyIsReadAndTheNextOneToo() {
    for (int i = 0; i < 3; i++) {
      assertThat(club.send("{").statusCode()).isEqualTo(400);
      assertThat(club.send(rep("r-" + i, "s", "d", "18:00:00", "")).statusCode()).isEqualTo(201);
    }
  }
}
