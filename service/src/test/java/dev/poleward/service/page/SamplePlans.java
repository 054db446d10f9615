package dev.poleward.service.page;

import dev.poleward.domain.care.CareNote;
import dev.poleward.domain.care.Severity;
import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import java.time.LocalDate;
import java.util.List;

/** Plans on paper. */
final class SamplePlans {

  private SamplePlans() {}

  static PlanOnPaper of(String dog) {
    return new PlanOnPaper(
        "plan-1",
        dog,
        LocalDate.of(2026, 5, 4),
        "Saltmarsh way",
        "Four poles behind a jump",
        "In all 6 of the 10 reps asked for: nothing else has its turn.",
        List.of(
            drill(LeadIn.NONE, 0, "4 poles, straight on, alongside", 1),
            drill(LeadIn.JUMP, 45, "4 poles behind a jump, 45° on the pole side, send", 3),
            drill(LeadIn.JUMP, 45, "4 poles behind a jump, 45° on the pole side, recall", 2)),
        List.of(
            new CareNote(
                "warm", Severity.CAUTION, "It is warm: fewer reps & shade.", "NWS <heat>")));
  }

  private static PlanOnPaper.Drill drill(LeadIn leadIn, double angle, String words, int reps) {
    return new PlanOnPaper.Drill(
        new Setup(4, 0.6, leadIn, 5.0, new Approach(new EntryAngle(angle), null), null, null, null),
        words,
        reps,
        0.91,
        "a toy at the end",
        "To pass this rung, 4 more clean reps would decide.",
        "4 poles, straight on, alongside");
  }
}
