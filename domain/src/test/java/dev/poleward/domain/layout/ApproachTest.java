package dev.poleward.domain.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class ApproachTest {

  private static final EntryAngle HALF_PAST_ONE = new EntryAngle(45);
  private static final ClockPosition ON_THE_CLOCK = new ClockPosition(1, true);

  @Test
  void angleAndClockPositionAreTwoWaysToSayOneThing() {
    assertThat(new Approach(HALF_PAST_ONE, null).entry()).isEqualTo(HALF_PAST_ONE);
    assertThat(new Approach(null, ON_THE_CLOCK).entry()).isEqualTo(HALF_PAST_ONE);
    assertThat(new Approach(HALF_PAST_ONE, ON_THE_CLOCK).entry()).isEqualTo(HALF_PAST_ONE);
  }

  @Test
  void bothMustAgree() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Approach(new EntryAngle(-45), ON_THE_CLOCK))
        .withMessageContaining("1:30");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Approach(new EntryAngle(45.001), ON_THE_CLOCK));
  }

  @Test
  void aClockPositionIsMeantExactlyWhateverTheAngleWasRoundedTo() {
    Approach rounded = new Approach(new EntryAngle(45.0000005), ON_THE_CLOCK);

    assertThat(rounded.entry()).isEqualTo(HALF_PAST_ONE);
  }

  @Test
  void itSaysSomething() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Approach(null, null));
  }
}
