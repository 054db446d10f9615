package dev.poleward.domain.running;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a running order is made of.
 *
 * @param dogs those that are present, the first first; at most {@link #DOGS_MAX}
 * @param wanted what they are to run, for each dog in its order; at most {@link #TURNS_MAX} turns
 *     over {@link #SETUPS_MAX} setups that stand differently
 * @param poleSets one or more, at most {@link #POLE_SETS_MAX}
 * @param instructors how many dogs can be out at a time, from 1
 * @param seconds at hand
 * @param apart who may not follow whom
 * @param comes from when on a dog is there, in seconds from the beginning; from it on otherwise
 * @param ran what was run already, oldest first
 */
public record RunningQuestion(
    List<String> dogs,
    List<Wanted> wanted,
    List<PoleSet> poleSets,
    int instructors,
    Pace pace,
    int seconds,
    Set<Following> apart,
    Map<String, Integer> comes,
    List<Ran> ran) {

  public static final int DOGS_MAX = 30;
  public static final int SETUPS_MAX = 60;
  public static final int TURNS_MAX = 240;
  public static final int POLE_SETS_MAX = 4;

  /** Keeps it from changing. */
  public RunningQuestion {
    dogs = List.copyOf(dogs);
    wanted = List.copyOf(wanted);
    poleSets = List.copyOf(poleSets);
    apart = Set.copyOf(apart);
    comes = Map.copyOf(comes);
    ran = List.copyOf(ran);
  }
}
