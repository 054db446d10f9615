package dev.poleward.load.plan;

import dev.poleward.domain.planning.PlanBlock;
import dev.poleward.domain.planning.SessionPlan;

/** Sees how plans are run, and what the dog is really able to, without a hand in either. */
interface PlanWitness {

  /** Looks at nothing. */
  PlanWitness NONE =
      new PlanWitness() {
        @Override
        public void begins(SessionPlan plan, Trainee dog) {
          // Looks at nothing.
        }

        @Override
        public void runs(PlanBlock block, Trainee dog) {
          // Looks at nothing.
        }

        @Override
        public void ran(PlanBlock block, boolean clean) {
          // Looks at nothing.
        }
      };

  /** A session begins; no rep of it is run yet. */
  void begins(SessionPlan plan, Trainee dog);

  /** A rep of a block is run next. */
  void runs(PlanBlock block, Trainee dog);

  /** That rep was run. */
  void ran(PlanBlock block, boolean clean);
}
