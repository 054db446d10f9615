package dev.poleward.domain.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CleanModelTest {

  private static double[] only(int trait) {
    double[] traits = new double[Traits.COUNT];
    traits[trait] = 1;
    return traits;
  }

  /** Nothing is likelier or surer than was expected of any dog [D]. */
  @Test
  void withoutRepsItIsWhatIsExpectedOfAnyDog() {
    for (int trait = 0; trait < Traits.COUNT; trait++) {
      assertThat(CleanModel.OF_ANY_DOG.logit(only(trait))).isEqualTo(Traits.expected()[trait]);
      assertThat(CleanModel.OF_ANY_DOG.variance(only(trait)))
          .isCloseTo(Math.pow(Traits.deviation()[trait], 2), within(1e-12));
    }
  }

  /**
   * With one trait the top is where 30 - 40 p(w) = (w - m) / s², and the doubt 1 / (1 / s² + 40 p
   * (1 - p)) there [D]; the first number is that of every rep.
   */
  @Test
  void ofOneTraitTheTopAndItsDoubtAreThoseByHand() {
    double mean = Traits.expected()[0];
    double precision = 1 / Math.pow(Traits.deviation()[0], 2);
    CleanModel model = CleanModel.fitted(List.of(new CleanModel.Group(only(0), 30, 10)));
    double top = model.logit(only(0));
    double share = 1 / (1 + Math.exp(-top));

    assertThat(30 - 40 * share).isCloseTo(precision * (top - mean), within(1e-6));
    assertThat(model.variance(only(0)))
        .isCloseTo(1 / (precision + 40 * share * (1 - share)), within(1e-9));
    assertThat(model.logit(only(1))).isEqualTo(Traits.expected()[1]);
  }

  /** The slope of the penalised likelihood, taken anew, is nought at the top. */
  @Test
  void nothingNearIsLikelier() {
    SplittableRandom random = new SplittableRandom(11);
    for (int round = 0; round < 20; round++) {
      List<double[]> traits = new ArrayList<>();
      List<double[]> counts = new ArrayList<>();
      List<CleanModel.Group> groups = new ArrayList<>();
      for (int group = 0; group < 60; group++) {
        double[] drawn = random.doubles(Traits.COUNT, -1, 1).toArray();
        double[] count = {6 * random.nextDouble(), 3 * random.nextDouble()};
        traits.add(drawn);
        counts.add(count);
        groups.add(new CleanModel.Group(drawn, count[0], count[1]));
      }
      CleanModel model = CleanModel.fitted(groups);
      for (int trait = 0; trait < Traits.COUNT; trait++) {
        double off = model.logit(only(trait)) - Traits.expected()[trait];
        double slope = -off / Math.pow(Traits.deviation()[trait], 2);
        for (int group = 0; group < groups.size(); group++) {
          double share = 1 / (1 + Math.exp(-model.logit(traits.get(group))));
          double[] count = counts.get(group);
          slope += traits.get(group)[trait] * (count[0] - (count[0] + count[1]) * share);
        }
        assertThat(slope).as("trait %d", trait).isCloseTo(0, within(1e-6));
      }
    }
  }
}
