package dev.poleward.service.page;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The same reason is told once for drills that follow each other. */
class DrillReasonsTest {

  private static PlanOnPaper.Drill drill(@Nullable String reason, @Nullable String easier) {
    return new PlanOnPaper.Drill(
        new Setup(4, 0.6, LeadIn.NONE, null, null, null, null, null),
        "4 poles, send",
        2,
        null,
        null,
        reason,
        easier);
  }

  private static List<String> words(PlanOnPaper.Drill... drills) {
    return DrillReasons.of(List.of(drills)).stream().map(DrillReasons::words).toList();
  }

  @Test
  void neighboursWithOneReasonShareALine() {
    assertThat(
            words(
                drill("To begin with.", null),
                drill("Solid.", "recall"),
                drill("Solid.", "recall"),
                drill("Solid.", "recall"),
                drill("New.", "recall"),
                drill("Solid.", "recall"),
                drill("Solid.", "recall")))
        .containsExactly(
            "1. To begin with.",
            "2 to 4. Solid. After two misses running: recall.",
            "5. New. After two misses running: recall.",
            "6 and 7. Solid. After two misses running: recall.");
  }

  @Test
  void whatIsEasierIsToldOfEachWhereItDiffers() {
    assertThat(
            words(
                drill("Solid.", "recall"),
                drill("Solid.", null),
                drill("Solid.", "send"),
                drill("Solid.", "recall")))
        .containsExactly(
            "1 to 4. Solid. After two misses running, instead of 1, 4: recall; instead of 3:"
                + " send.");
  }

  @Test
  void withoutAReasonTheDrillSpeaksForItself() {
    assertThat(words(drill(null, null), drill(null, null)))
        .containsExactly("1 and 2. 4 poles, send.");
    assertThat(words()).isEmpty();
  }
}
