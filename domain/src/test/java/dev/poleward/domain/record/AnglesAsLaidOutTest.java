package dev.poleward.domain.record;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.layout.EntryAngle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AnglesAsLaidOutTest {

  /** 60 degrees to radians and back is 59.99999999999999 in many a device. */
  @Test
  void whatRadiansMakeOfAnAngleIsThatAngle() {
    EntryAngle backFromRadians = new EntryAngle(60.0 / 180 * Math.PI * (180 / Math.PI) - 7e-15);

    assertThat(backFromRadians).isNotEqualTo(new EntryAngle(60));
    assertThat(backFromRadians.asLaidOut()).isEqualTo(new EntryAngle(60));
  }

  @ParameterizedTest
  @CsvSource({
    "1e-170, 0",
    "-4e-5, 0",
    "12.34564, 12.3456",
    "-47.12, -47.12",
    "179.99999, 179.99999",
    "-179.9999, -179.9999",
  })
  void anglesAreToldApartToATenThousandthOfADegree(double said, double laidOut) {
    assertThat(new EntryAngle(said).asLaidOut()).isEqualTo(new EntryAngle(laidOut));
    assertThat(new EntryAngle(laidOut).asLaidOut()).isEqualTo(new EntryAngle(laidOut));
  }
}
