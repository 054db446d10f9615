package dev.poleward.load.running;

import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.running.Pace;
import dev.poleward.domain.running.PoleSet;
import dev.poleward.domain.running.RunningQuestion;
import dev.poleward.domain.running.Wanted;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * A kind of class. Its setups are drawn over poles, lead-ins and angles; each dog wants some of
 * them, and every setup is wanted by somebody.
 *
 * @param turns that each dog wants
 * @param minutes at hand
 */
public record DrawnClass(String name, int setups, int dogs, int turns, int poleSets, int minutes) {

  /** Those that are measured. */
  public static final List<DrawnClass> KINDS =
      List.of(
          new DrawnClass("6 dogs, 6 setups, 1 set, 90 min", 6, 6, 3, 1, 90),
          new DrawnClass("8 dogs, 12 setups, 1 set, 120 min", 12, 8, 3, 1, 120),
          new DrawnClass("8 dogs, 12 setups, 2 sets, 60 min", 12, 8, 3, 2, 60),
          new DrawnClass("12 dogs, 12 setups, 2 sets, 60 min (short)", 12, 12, 5, 2, 60),
          new DrawnClass("12 dogs, 12 setups, 4 sets, 60 min", 12, 12, 5, 4, 60),
          new DrawnClass("12 dogs, 24 setups, 1 set, 240 min", 24, 12, 4, 1, 240),
          new DrawnClass("12 dogs, 24 setups, 2 sets, 120 min", 24, 12, 4, 2, 120),
          new DrawnClass("30 dogs, 60 setups, 1 set, 480 min", 60, 30, 3, 1, 480),
          new DrawnClass("30 dogs, 60 setups, 4 sets, 120 min", 60, 30, 3, 4, 120),
          new DrawnClass("30 dogs, 60 setups, 2 sets, 60 min (short)", 60, 30, 8, 2, 60));

  private static final Pace PACE = new Pace(180, 120, 180);

  /** The class of that seed. */
  public RunningQuestion question(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Setup> drawn = new ArrayList<>();
    while (drawn.size() < setups) {
      Setup setup = setup(random);
      if (!drawn.contains(setup)) {
        drawn.add(setup);
      }
    }
    List<String> names = IntStream.range(0, dogs).mapToObj(i -> "dog-" + i).toList();
    List<Wanted> wanted = new ArrayList<>();
    for (int turn = 0; turn < dogs * turns; turn++) {
      // In turn at first, so that every setup is wanted.
      Setup setup = drawn.get(turn < setups ? turn : random.nextInt(setups));
      wanted.add(new Wanted(names.get(turn % dogs), setup, 1));
    }
    List<PoleSet> sets = new ArrayList<>();
    for (int set = 0; set < poleSets; set++) {
      sets.add(new PoleSet("set-" + set, set == 0 ? setup(random) : null));
    }
    return new RunningQuestion(
        names, wanted, sets, poleSets, PACE, minutes * 60, Set.of(), Map.of(), List.of());
  }

  private static Setup setup(SplittableRandom random) {
    int poles = List.of(3, 4, 6, 12).get(random.nextInt(4));
    LeadIn leadIn = random.nextInt(6) == 0 ? LeadIn.NONE : LeadIn.values()[1 + random.nextInt(2)];
    double angle = 7.5 * random.nextInt(-12, 13);
    return new Setup(
        poles,
        0.6,
        leadIn,
        leadIn == LeadIn.NONE ? null : 5.0,
        leadIn == LeadIn.NONE ? null : new Approach(new EntryAngle(angle), null),
        null,
        null,
        null);
  }
}
