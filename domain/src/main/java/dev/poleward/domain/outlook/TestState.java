package dev.poleward.domain.outlook;

import dev.poleward.domain.judgement.Decision;
import dev.poleward.domain.judgement.Evidence;
import dev.poleward.domain.judgement.MovingOnTest;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A test for moving on, as states with steps between them: the test itself says where each step
 * leads, once, and a million simulated reps follow. For one thread.
 */
final class TestState {

  /** All states of one test. */
  private static final class Known {

    private final Map<Evidence, TestState> states = new HashMap<>();

    TestState of(Evidence evidence) {
      return states.computeIfAbsent(evidence, each -> new TestState(this, each));
    }
  }

  private final Known known;
  private final Evidence evidence;
  private final boolean passed;
  private @Nullable TestState afterClean;
  private @Nullable TestState afterMiss;

  private TestState(Known known, Evidence evidence) {
    this.known = known;
    this.evidence = evidence;
    this.passed = evidence.decision() == Decision.MOVE_ON;
  }

  /** The state of a test that has seen nothing. */
  static TestState begun(MovingOnTest test) {
    return new Known().of(test.begun());
  }

  /** The state of the same test that has seen that. */
  TestState at(Evidence seen) {
    return known.of(seen);
  }

  /** Whether the test says to move on. */
  boolean passed() {
    return passed;
  }

  /** After one more rep. */
  TestState with(boolean clean) {
    TestState next = clean ? afterClean : afterMiss;
    if (next == null) {
      next = known.of(evidence.with(clean));
      if (clean) {
        afterClean = next;
      } else {
        afterMiss = next;
      }
    }
    return next;
  }
}
