package dev.poleward.service.journal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class Rfc3339Test {

  @Test
  void everyTimeComesBackWithItsOffset() {
    long seed = new Random().nextLong();
    System.out.println("Rfc3339Test seed " + seed);
    var random = new Random(seed);
    for (int at = 0; at < 20_000; at++) {
      var time =
          OffsetDateTime.ofInstant(
              Instant.ofEpochSecond(
                  random.nextLong(-62_000_000_000L, 253_000_000_000L),
                  random.nextInt(10) == 0 ? 0 : random.nextInt(1_000_000_000)),
              ZoneOffset.ofTotalSeconds(60 * random.nextInt(-18 * 60, 18 * 60 + 1)));

      assertThat(Rfc3339.parse(Rfc3339.bytes(time))).isEqualTo(time);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-05-01T18:30:00Z",
        "2026-05-01t18:30:00.5z",
        "2026-05-01T18:30:00.1234567+05:45",
        "2026-05-01T18:30:00-00:00",
        "2024-02-29T23:59:59.999999999+14:00"
      })
  void whatTheLibraryReadsIsReadAlike(String text) {
    assertThat(Rfc3339.parse(text.getBytes(UTF_8))).isEqualTo(OffsetDateTime.parse(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "2026-05-01",
        "2026-05-01T18:30:00",
        "2026-05-01T18:30:0xZ",
        "2026-05-01T25:30:00Z",
        "2025-02-29T00:00:00Z",
        "2026-05-01T18:30:00.1234567890Z",
        "2026-05-01T18:30:00+19:00",
        "2026-05-01T18:30:00*02:00"
      })
  void whatIsNoTimeIsRefused(String text) {
    assertThatThrownBy(() -> Rfc3339.parse(text.getBytes(UTF_8)))
        .isInstanceOf(DateTimeException.class);
  }
}
