package dev.poleward.load;

import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.learner.Population;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.learner.Temper;
import dev.poleward.load.figures.Arguments;
import dev.poleward.load.learner.Plot;
import dev.poleward.load.learner.Taught;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Plots what the parameters of the simulated dog mean, for {@code docs/learner.md}. Runs in the
 * folder of this module, as Maven starts it.
 */
public final class LearnerPictures {

  private static final double LEVEL = 0.8;
  private static final int WEEKS = 40;
  private static final int REST_FROM = 20;
  private static final int REST_TO = 32;
  private static final double[] ANGLES =
      IntStream.rangeClosed(-18, 24).mapToDouble(step -> 5 * step).toArray();

  private static final Map<String, Temper> TEMPERS = new LinkedHashMap<>();

  static {
    TEMPERS.put("quick", Temper.QUICK);
    TEMPERS.put("ordinary", Temper.ORDINARY);
    TEMPERS.put("sensitive", Temper.SENSITIVE);
  }

  private final Path folder;
  private final int dogs;

  private LearnerPictures(Path folder, int dogs) {
    this.folder = folder;
    this.dogs = dogs;
  }

  public static void main(String[] args) throws IOException {
    System.setProperty("java.awt.headless", "true");
    Arguments arguments = new Arguments(args);
    Path folder = Path.of(arguments.text("folder", "../docs/pictures"));
    LearnerPictures pictures = new LearnerPictures(folder, arguments.whole("dogs", 201, 1));
    System.out.println(arguments.settings());
    Files.createDirectories(folder);
    pictures.learning();
    pictures.spreading();
    pictures.fading();
  }

  private void learning() throws IOException {
    Plot plot =
        new Plot(
            "From straight on to 90 degrees, two evenings of eight reps a week",
            "weeks",
            "true threshold at 0.8, degrees");
    plot.axes(0, REST_FROM, 2, 0, 100);
    for (Map.Entry<String, Temper> temper : TEMPERS.entrySet()) {
      double[] medians = new double[REST_FROM + 1];
      Taught[] litter = litter(temper.getValue());
      for (int week = 0; week <= REST_FROM; week++) {
        medians[week] = median(litter, LearnerPictures::threshold);
        for (Taught dog : litter) {
          dog.train();
        }
      }
      plot.line(temper.getKey(), upTo(REST_FROM), medians);
    }
    plot.write(folder.resolve("learner-weeks.png"));
  }

  /** The lesser of the two sides: both have to be there. */
  private static double threshold(SimulatedDog dog) {
    return Math.min(threshold(dog, EntrySide.POLE), threshold(dog, EntrySide.GAP));
  }

  private static double threshold(SimulatedDog dog, EntrySide side) {
    return dog.trueThreshold(side, LEVEL, Taught.FOUR_POLES).orElse(180);
  }

  private void spreading() throws IOException {
    Plot plot =
        new Plot(
            "An ordinary dog's chance of the entry after reps at 45 degrees alone",
            "entry angle, degrees; below 0 is the gap side",
            "chance of the entry");
    plot.axes(-90, 120, 30, 0, 1);
    SimulatedDog dog = new SimulatedDog(Temper.ORDINARY);
    SplittableRandom luck = new SplittableRandom(1);
    int reps = 0;
    for (int upTo : new int[] {0, 10, 40}) {
      for (; reps < upTo; reps++) {
        // Ten minutes apart: fresh each time.
        dog.attempt(
            Taught.FOUR_POLES.from(new EntryAngle(45)), Instant.ofEpochSecond(600L * reps), luck);
        dog.rewarded(1);
      }
      plot.line(
          upTo == 0 ? "before" : "after " + upTo + " reps",
          ANGLES,
          Arrays.stream(ANGLES).map(angle -> chance(dog, angle)).toArray());
    }
    plot.write(folder.resolve("learner-spread.png"));
  }

  private static double chance(SimulatedDog dog, double angle) {
    return dog.chanceOfEntry(Taught.FOUR_POLES.from(new EntryAngle(angle)));
  }

  private void fading() throws IOException {
    Plot plot =
        new Plot(
            "Twelve weeks of rest from week 20 on, then training again",
            "weeks",
            "chance of the entry at 45 degrees");
    plot.axes(0, WEEKS, 4, 0, 1);
    for (Map.Entry<String, Temper> temper : TEMPERS.entrySet()) {
      double[] medians = new double[WEEKS + 1];
      Taught[] litter = litter(temper.getValue());
      for (int week = 0; week <= WEEKS; week++) {
        medians[week] = median(litter, dog -> Math.min(chance(dog, 45), chance(dog, -45)));
        for (Taught dog : litter) {
          if (week >= REST_FROM && week < REST_TO) {
            dog.rest();
          } else {
            dog.train();
          }
        }
      }
      plot.line(temper.getKey(), upTo(WEEKS), medians);
    }
    plot.write(folder.resolve("learner-fading.png"));
  }

  /** Dogs of one temper that differ as dogs of a club do. */
  private Taught[] litter(Temper temper) {
    Population population =
        new Population(temper, Population.CLUB.quickness(), Population.CLUB.spread());
    SplittableRandom random = new SplittableRandom(7);
    return IntStream.range(0, dogs)
        .mapToObj(dog -> new Taught(population.draw(random), dog))
        .toArray(Taught[]::new);
  }

  private static double median(
      Taught[] litter, java.util.function.ToDoubleFunction<SimulatedDog> of) {
    double[] values = Arrays.stream(litter).map(Taught::dog).mapToDouble(of).sorted().toArray();
    return values[values.length / 2];
  }

  private static double[] upTo(int weeks) {
    return IntStream.rangeClosed(0, weeks).asDoubleStream().toArray();
  }
}
