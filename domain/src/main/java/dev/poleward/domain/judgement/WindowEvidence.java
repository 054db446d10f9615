package dev.poleward.domain.judgement;

import java.util.ArrayList;
import java.util.List;

/**
 * The last reps of a {@link KOfN}.
 *
 * @param last whether each was clean, the oldest first; at most the rule's {@code n}
 */
public record WindowEvidence(KOfN test, List<Boolean> last) implements Evidence {

  /** Keeps the reps from changing. */
  public WindowEvidence {
    last = List.copyOf(last);
  }

  @Override
  public WindowEvidence with(boolean isClean) {
    List<Boolean> next =
        new ArrayList<>(last.size() == test.n() ? last.subList(1, test.n()) : last);
    next.add(isClean);
    return new WindowEvidence(test, next);
  }

  @Override
  public Decision decision() {
    if (clean() >= test.k()) {
      return Decision.MOVE_ON;
    }
    return missed() > test.n() - test.k() ? Decision.HOLD : Decision.UNDECIDED;
  }

  @Override
  public int clean() {
    return (int) last.stream().filter(each -> each).count();
  }

  @Override
  public int missed() {
    return last.size() - clean();
  }

  @Override
  public int cleanRepsToDecide() {
    int more = 0;
    for (WindowEvidence next = this; next.decision() != Decision.MOVE_ON; more++) {
      next = next.with(true);
    }
    return more;
  }
}
