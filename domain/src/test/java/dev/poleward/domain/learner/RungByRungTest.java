package dev.poleward.domain.learner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A plain trainer's way up. */
class RungByRungTest {

  private final RungByRung ladder = new RungByRung(List.of(0.0, 15.0, 30.0), 1);

  private List<Double> run(boolean... made) {
    List<Double> angles = new ArrayList<>();
    for (boolean each : made) {
      angles.add(ladder.next().degrees());
      ladder.ran(each);
    }
    return angles;
  }

  private void climb() {
    int from = ladder.rung();
    while (ladder.rung() == from) {
      ladder.ran(true);
    }
  }

  @Test
  void entrySidesTakeTurns() {
    climb();

    assertThat(run(true, true, true, true)).containsExactly(15.0, -15.0, 15.0, -15.0);
  }

  @Test
  void whereEquipmentMovesASideMayHaveSeveralRepsRunning() {
    RungByRung turned = new RungByRung(List.of(20.0), 2);
    List<Double> angles = new ArrayList<>();
    for (int rep = 0; rep < 6; rep++) {
      angles.add(turned.next().degrees());
      turned.ran(true);
    }

    assertThat(angles).containsExactly(20.0, 20.0, -20.0, -20.0, 20.0, 20.0);
  }

  @Test
  void bothSidesPassBeforeTheNextRung() {
    climb();
    // The gap side misses once in three and is worked on alone in the end.
    List<Double> angles = run(true, true, true, true, true, false, true, true, true, true, true);
    assertThat(ladder.rung()).isEqualTo(1);
    assertThat(angles.getLast()).isEqualTo(15.0);

    assertThat(run(true)).containsExactly(-15.0);
    assertThat(ladder.rung()).isEqualTo(2);
  }

  @Test
  void twoMissesRunningAreFollowedByAnEasierRep() {
    climb();
    climb();

    assertThat(run(false, false, true, true)).containsExactly(30.0, -30.0, -15.0, -30.0);
  }

  @Test
  void aRungThatIsTooHardIsLeft() {
    climb();
    climb();
    while (ladder.rung() == 2) {
      ladder.ran(false);
    }

    assertThat(ladder.rung()).isEqualTo(1);
    assertThat(Math.abs(ladder.next().degrees())).isEqualTo(15);
  }

  @Test
  void afterTheLastRungItIsDone() {
    climb();
    climb();
    assertThat(ladder.done()).isFalse();
    climb();

    assertThat(ladder.done()).isTrue();
    assertThat(Math.abs(ladder.next().degrees())).isEqualTo(30);
    assertThatThrownBy(() -> new RungByRung(List.of(), 1))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
