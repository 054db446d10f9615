package dev.poleward.domain.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class MomentTest {

  private static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");

  @Test
  void momentsAreOrderedByTimeAndThenByTheBytesOfTheId() {
    List<Moment> ascending =
        List.of(
            new Moment(NOON.minusNanos(1), "z"),
            new Moment(NOON, "-"),
            new Moment(NOON, "10"),
            new Moment(NOON, "9"),
            new Moment(NOON, "A"),
            new Moment(NOON, "a"),
            new Moment(NOON, "a-"),
            new Moment(NOON, "~"),
            new Moment(NOON.plusNanos(1), "-"));

    assertThat(ascending.reversed().stream().sorted()).containsExactlyElementsOf(ascending);
  }
}
