package dev.poleward.domain.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.mastery.Confidence;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class EvenSpreadTest {

  private static final Confidence CONFIDENCE = Confidence.OF_95_PERCENT;

  /** Nine or more of ten on one of two sides: 22 of 1,024 ways [D]. */
  @Test
  void twoPlacesAreACoin() {
    assertThat(EvenSpread.of(List.of(9, 1), CONFIDENCE).chance())
        .isCloseTo(22 / 1024.0, within(1e-15));
    assertThat(EvenSpread.of(List.of(5, 5), CONFIDENCE).chance()).isEqualTo(1);
  }

  /** Three faults at one of three places: 3 of 27 ways; two and one: 21 of 27 [D]. */
  @Test
  void threeFaultsAtThreePlaces() {
    assertThat(EvenSpread.of(List.of(0, 3, 0), CONFIDENCE).chance())
        .isCloseTo(3 / 27.0, within(1e-15));
    assertThat(EvenSpread.of(List.of(1, 2, 0), CONFIDENCE).chance())
        .isCloseTo(21 / 27.0, within(1e-15));
    assertThat(EvenSpread.of(List.of(1, 1, 1), CONFIDENCE).chance()).isEqualTo(1);
  }

  /** Every way that seven faults can fall on four places [D]. */
  @Test
  void theChanceIsExact() {
    int[] faults = {0, 4, 1, 2};
    int squares = 21;
    int asUneven = 0;
    for (int way = 0; way < 1 << 14; way++) {
      int[] fallen = new int[4];
      for (int fault = 0; fault < 7; fault++) {
        fallen[(way >> (2 * fault)) & 3]++;
      }
      int sum = 0;
      for (int each : fallen) {
        sum += each * each;
      }
      asUneven += sum >= squares ? 1 : 0;
    }

    assertThat(EvenSpread.of(boxed(faults), CONFIDENCE).chance())
        .isCloseTo((double) asUneven / (1 << 14), within(1e-12));
  }

  /** A die thrown 60 times, 5 8 9 8 10 20: chi-square 13.4 with 5 degrees, p .01991 [M]. */
  @Test
  void aDieThatIsNotFair() {
    assertThat(EvenSpread.of(List.of(5, 8, 9, 8, 10, 20), CONFIDENCE).chance())
        .isCloseTo(.01991, within(0.51e-5));
  }

  @Test
  void whereTheExactChanceEndsChiSquareIsNear() {
    List<Integer> forty = List.of(6, 2, 9, 3, 4, 7, 2, 7);
    List<Integer> fortyOne = List.of(6, 2, 9, 3, 4, 7, 3, 7);

    assertThat(EvenSpread.of(forty, CONFIDENCE).chance())
        .isCloseTo(EvenSpread.of(fortyOne, CONFIDENCE).chance(), within(0.08));
  }

  @Test
  void thePlaceWhereMostGoesWrongStandsOut() {
    EvenSpread spread = EvenSpread.of(List.of(1, 2, 12, 1, 2), CONFIDENCE);

    assertThat(spread.chance()).isLessThan(0.001);
    assertThat(spread.places().stream().map(EvenSpread.Place::standsOut))
        .containsExactly(false, false, true, false, false);
    assertThat(Objects.requireNonNull(spread.places().get(2).share()).value())
        .isCloseTo(12 / 18.0, within(1e-12));
  }

  @Test
  void oneFaultStandsOutNowhere() {
    EvenSpread one = EvenSpread.of(List.of(0, 1, 0, 0, 0, 0), CONFIDENCE);

    assertThat(one.chance()).isEqualTo(1);
    assertThat(one.places()).noneMatch(EvenSpread.Place::standsOut);
  }

  /** Of twelve places: 12 · 1/144 = 8.3%, 12 · 1/1,728 = 0.7% [D]. */
  @Test
  void twoFaultsAtOneOfTwelvePolesMayBeChanceAndThreeAreNot() {
    assertThat(stoodOut(2, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0)).isEmpty();
    assertThat(stoodOut(0, 0, 3, 0, 0, 0, 0, 0, 0, 0, 0, 0)).containsExactly(2);
  }

  private static List<Integer> stoodOut(int... faults) {
    List<EvenSpread.Place> places = EvenSpread.of(boxed(faults), CONFIDENCE).places();
    return IntStream.range(0, faults.length)
        .filter(place -> places.get(place).standsOut())
        .boxed()
        .toList();
  }

  /** Simulated, seed 2: faults that fall evenly make any place stand out in no more than 5%. */
  @Test
  void ofAnEvenSpreadSeldomAnyPlaceStandsOut() {
    SplittableRandom random = new SplittableRandom(2);
    for (int faults : new int[] {1, 2, 4, 10, 30}) {
      int lines = 2_000;
      int stoodOut = 0;
      for (int line = 0; line < lines; line++) {
        int[] fallen = new int[6];
        for (int fault = 0; fault < faults; fault++) {
          fallen[random.nextInt(fallen.length)]++;
        }
        stoodOut += stoodOut(fallen).isEmpty() ? 0 : 1;
      }

      assertThat((double) stoodOut / lines).as("%d faults", faults).isLessThanOrEqualTo(0.06);
    }
  }

  @Test
  void withoutFaultsNothingIsUneven() {
    EvenSpread none = EvenSpread.of(List.of(0, 0, 0), CONFIDENCE);

    assertThat(none.chance()).isEqualTo(1);
    assertThat(none.places()).noneMatch(EvenSpread.Place::standsOut);
    assertThat(none.places()).extracting(EvenSpread.Place::share).containsOnlyNulls();
    assertThat(EvenSpread.of(List.of(), CONFIDENCE).chance()).isEqualTo(1);
    assertThat(EvenSpread.of(List.of(7), CONFIDENCE).chance()).isEqualTo(1);
    assertThat(EvenSpread.of(List.of(0, 1, 0), CONFIDENCE).chance()).isEqualTo(1);
  }

  @Test
  void whichPlaceItIsDoesNotShowInTheChance() {
    List<Integer> faults = new ArrayList<>(List.of(0, 4, 1, 2, 9, 1));
    double chance = EvenSpread.of(faults, CONFIDENCE).chance();
    Collections.reverse(faults);

    assertThat(EvenSpread.of(faults, CONFIDENCE).chance()).isEqualTo(chance);
  }

  /** Simulated, seed 1: faults that fall evenly seem uneven at 5% in no more than 5%. */
  @Test
  void anEvenSpreadIsSeldomCalledUneven() {
    SplittableRandom random = new SplittableRandom(1);
    int dogs = 400;
    int uneven = 0;
    for (int dog = 0; dog < dogs; dog++) {
      int[] faults = new int[11];
      for (int fault = 0; fault < 15; fault++) {
        faults[random.nextInt(faults.length)]++;
      }
      uneven += EvenSpread.of(boxed(faults), CONFIDENCE).chance() <= 0.05 ? 1 : 0;
    }

    assertThat((double) uneven / dogs).isLessThanOrEqualTo(0.06);
  }

  private static List<Integer> boxed(int[] faults) {
    return Arrays.stream(faults).boxed().toList();
  }
}
