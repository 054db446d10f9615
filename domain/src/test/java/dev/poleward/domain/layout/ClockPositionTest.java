package dev.poleward.domain.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The face is centred on pole 1 and seen from above, the poles run towards 6. That 3 o'clock is 90
 * degrees is common practice, no source; the rest follows by arithmetic: an hour is 30 degrees.
 */
class ClockPositionTest {

  @ParameterizedTest
  @CsvSource({
    "12:00, 0, BOTH",
    "12:30, 15, POLE",
    "1:00, 30, POLE",
    "1:30, 45, POLE",
    "2:00, 60, POLE",
    "2:30, 75, POLE",
    "3:00, 90, POLE",
    "3:30, 105, POLE",
    "4:00, 120, POLE",
    "4:30, 135, POLE",
    "5:00, 150, POLE",
    "5:30, 165, POLE",
    "6:30, -165, GAP",
    "7:00, -150, GAP",
    "7:30, -135, GAP",
    "8:00, -120, GAP",
    "8:30, -105, GAP",
    "9:00, -90, GAP",
    "9:30, -75, GAP",
    "10:00, -60, GAP",
    "10:30, -45, GAP",
    "11:00, -30, GAP",
    "11:30, -15, GAP",
  })
  void everyHalfHourIsAnAngleAndAnEntrySide(String written, double degrees, EntrySide side) {
    ClockPosition position = ClockPosition.read(written).orElseThrow();

    assertThat(position.angle().degrees()).isEqualTo(degrees);
    assertThat(position.angle().side()).isEqualTo(side);
    assertThat(position).hasToString(written);
    assertThat(new EntryAngle(degrees).clock()).contains(position);
  }

  @Test
  void thereAreTwentyThreePositions() {
    Map<Double, ClockPosition> positions = new TreeMap<>();
    for (int hour = 1; hour <= 12; hour++) {
      for (String half : List.of(":00", ":30")) {
        ClockPosition.read(hour + half).ifPresent(at -> positions.put(at.angle().degrees(), at));
      }
    }

    assertThat(positions).hasSize(23);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "6:00", "0:00", "13:00", "1:15", "1:3", "1", "01:00", "1:30 ", " 1:30", "-1:00", "1.30",
        "12:60", "", "１:00"
      })
  void otherTextIsNoPosition(String text) {
    assertThat(ClockPosition.read(text)).isEmpty();
  }

  @Test
  void sixHasNoEntrySideAndIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new ClockPosition(6, false))
        .withMessageContaining("6:00");
    assertThat(new ClockPosition(6, true)).hasToString("6:30");
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 0, 13, 18})
  void thereAreNoHoursOffTheFace(int hour) {
    assertThatIllegalArgumentException().isThrownBy(() -> new ClockPosition(hour, false));
  }
}
