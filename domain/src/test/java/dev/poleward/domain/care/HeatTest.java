package dev.poleward.domain.care;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.HeatRisk;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatTest {

  /** US National Weather Service, heat index chart, degrees Fahrenheit and per cent [M]. */
  @ParameterizedTest
  @CsvSource({
    "80, 40, 80",
    "84, 60, 88",
    "90, 50, 95",
    "90, 70, 105",
    "96, 50, 108",
    "100, 40, 109",
    "86, 90, 105",
  })
  void theIndexIsTheWeatherServices(double temperature, double humidity, double index) {
    double celsius = (temperature - 32) * 5 / 9;

    assertThat(Heat.index(celsius, humidity) * 9 / 5 + 32).isCloseTo(index, within(1.1));
  }

  @Test
  void whereItIsCoolTheIndexIsAboutTheTemperature() {
    assertThat(Heat.index(15, 50)).isCloseTo(15, within(1.5));
    assertThat(Heat.index(0, 50)).isCloseTo(0, within(3.0));
  }

  @Test
  void sunAFlatFaceAndSizeMakeItWarmer() {
    Conditions shade = new Conditions(22.0, 50.0, Conditions.Sky.SHADE, null);
    Conditions sun = new Conditions(22.0, 50.0, Conditions.Sky.SUN, null);
    double plain = Heat.forDog(22, shade, dog(0.5, HeatRisk.NONE));

    assertThat(Heat.forDog(22, sun, dog(0.5, HeatRisk.NONE))).isEqualTo(plain + 4);
    assertThat(Heat.forDog(22, shade, dog(0.5, HeatRisk.RAISED))).isEqualTo(plain + 3);
    assertThat(Heat.forDog(22, shade, dog(0.3, HeatRisk.HIGH))).isEqualTo(plain + 6);
    assertThat(Heat.forDog(22, shade, dog(0.6, null))).isEqualTo(plain + 2);
    assertThat(Heat.forDog(22, Conditions.NOT_SAID, dog(null, null))).isEqualTo(plain);
  }

  private static DogTraits dog(@Nullable Double height, @Nullable HeatRisk risk) {
    return new DogTraits(null, height, risk, null, null);
  }
}
