package dev.poleward.domain.running;

import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/** Classes of all kinds, small enough to try all orders of them. */
record GeneratedClass(RunningQuestion question, Carrying carrying) {

  static final int SETUPS_MAX = 8;
  private static final int TURNS_MAX = 9;

  static GeneratedClass of(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int setups = random.nextInt(1, SETUPS_MAX + 1);
    List<String> dogs = names("dog", random.nextInt(1, 5));
    List<PoleSet> poleSets = new ArrayList<>();
    int sets = setups > 6 ? random.nextInt(1, 3) : random.nextInt(1, 4);
    for (String name : names("set", sets)) {
      // Some stand with what nobody wants today, some with nothing.
      int stands = random.nextInt(setups + 2);
      poleSets.add(new PoleSet(name, stands > setups ? null : numbered(stands)));
    }
    List<Wanted> wanted = wanted(random, dogs, setups);
    Pace pace = new Pace(random.nextInt(1, 5), random.nextInt(4), random.nextInt(9));
    return new GeneratedClass(
        new RunningQuestion(
            dogs,
            wanted,
            poleSets,
            random.nextInt(1, sets + 1),
            pace,
            random.nextInt(3) == 0 ? random.nextInt(1, 25) : 1_000,
            apart(random, dogs),
            comes(random, dogs),
            ran(random, wanted, poleSets)),
        carrying(random, random.nextBoolean() ? 3 : 5_000));
  }

  static Setup numbered(int number) {
    return new Setup(number + 2, 0.6, LeadIn.NONE, null, null, null, null, null);
  }

  private static List<String> names(String kind, int count) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      names.add(kind + "-" + i);
    }
    return names;
  }

  private static List<Wanted> wanted(SplittableRandom random, List<String> dogs, int setups) {
    List<Wanted> wanted = new ArrayList<>();
    for (int setup = 0; setup < setups; setup++) {
      wanted.add(new Wanted(one(random, dogs), numbered(setup), 1));
    }
    for (int more = random.nextInt(TURNS_MAX - setups + 1); more > 0; more--) {
      wanted.add(new Wanted(one(random, dogs), numbered(random.nextInt(setups)), 1));
    }
    return wanted;
  }

  private static <T> T one(SplittableRandom random, List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private static Set<Following> apart(SplittableRandom random, List<String> dogs) {
    Set<Following> apart = new HashSet<>();
    for (int pairs = random.nextInt(3); pairs > 0; pairs--) {
      apart.add(new Following(one(random, dogs), one(random, dogs)));
    }
    return apart;
  }

  private static Map<String, Integer> comes(SplittableRandom random, List<String> dogs) {
    Map<String, Integer> comes = new HashMap<>();
    if (random.nextInt(3) == 0) {
      comes.put(one(random, dogs), random.nextInt(10));
    }
    return comes;
  }

  private static List<Ran> ran(
      SplittableRandom random, List<Wanted> wanted, List<PoleSet> poleSets) {
    List<Ran> ran = new ArrayList<>();
    int ended = -random.nextInt(12);
    for (int turns = random.nextInt(4) == 0 ? random.nextInt(1, 3) : 0; turns > 0; turns--) {
      Wanted before = one(random, wanted);
      ran.add(new Ran(before.dog(), one(random, poleSets).name(), before.setup(), ended));
      ended = Math.min(0, ended + random.nextInt(4));
    }
    return ran;
  }

  /** Any way there costs something, one way round as much as it likes. */
  private static Carrying carrying(SplittableRandom random, int most) {
    double[][] metres = new double[SETUPS_MAX + 4][SETUPS_MAX + 4];
    for (double[] row : metres) {
      for (int i = 0; i < row.length; i++) {
        row[i] = random.nextInt(most) / 10.0;
      }
    }
    return (from, to) -> metres[place(from)][place(to)];
  }

  private static int place(@Nullable Setup setup) {
    return setup == null ? 0 : setup.poles() - 1;
  }
}
