package dev.poleward.domain.outlook;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.judgement.Decision;
import dev.poleward.domain.judgement.Evidence;
import dev.poleward.domain.judgement.KOfN;
import dev.poleward.domain.judgement.MovingOnTest;
import dev.poleward.domain.judgement.RunOfClean;
import dev.poleward.domain.judgement.SequentialTest;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TestStateTest {

  @Test
  void saysWhatTheTestSaysRepForRep() {
    SplittableRandom random = new SplittableRandom(2);
    for (MovingOnTest test :
        List.of(new SequentialTest(0.9, 0.7, 0.1, 0.1), new KOfN(8, 10), new RunOfClean(6))) {
      TestState begun = TestState.begun(test);
      int passed = 0;
      for (int dog = 0; dog < 200; dog++) {
        Evidence evidence = test.begun();
        TestState state = begun;
        for (int rep = 0; rep < 25; rep++) {
          boolean clean = random.nextDouble() < 0.7;
          evidence = evidence.with(clean);
          state = state.with(clean);
          assertThat(state.passed()).isEqualTo(evidence.decision() == Decision.MOVE_ON);
        }
        passed += state.passed() ? 1 : 0;
      }
      assertThat(passed).isBetween(1, 199);
    }
  }
}
