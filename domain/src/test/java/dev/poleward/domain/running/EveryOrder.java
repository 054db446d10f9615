package dev.poleward.domain.running;

import dev.poleward.domain.layout.Setup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The best running order by trying all: every way to deal the setups to the pole sets, in every
 * order, and over those with least metres every order of the turns. Shares no code with what it is
 * to check.
 */
final class EveryOrder {

  /** A turn, by its place in the question. */
  record Out(int poleSet, int setup, int dog, int had, int starts) {}

  /** What comes of trying all. */
  record Best(int turns, double metres, int waits, int ends, List<Out> outs, List<String> named) {}

  private record Due(int round, int dog, Setup setup) {}

  private static final Comparator<Out> STEP =
      Comparator.comparingInt(Out::poleSet)
          .thenComparingInt(Out::setup)
          .thenComparingInt(Out::had)
          .thenComparingInt(Out::dog);

  private static final Comparator<Best> ORDER =
      Comparator.comparingInt(Best::waits)
          .thenComparingInt(Best::ends)
          .thenComparing(
              (one, other) -> {
                for (int i = 0; i < one.outs().size(); i++) {
                  int compared = STEP.compare(one.outs().get(i), other.outs().get(i));
                  if (compared != 0) {
                    return compared;
                  }
                }
                return 0;
              });

  private final RunningQuestion question;
  private final Carrying carrying;
  private final List<Due> due = new ArrayList<>();
  private final List<Setup> setups = new ArrayList<>();
  private List<List<Setup>> way = new ArrayList<>();
  private List<Due> taken = List.of();
  private int busyMax;
  private long least;
  private final List<List<List<Setup>>> shortest = new ArrayList<>();
  private @Nullable Best best;

  private EveryOrder(RunningQuestion question, Carrying carrying) {
    this.question = question;
    this.carrying = carrying;
    for (int dog = 0; dog < question.dogs().size(); dog++) {
      String name = question.dogs().get(dog);
      List<Setup> ran =
          new ArrayList<>(
              question.ran().stream().filter(r -> r.dog().equals(name)).map(Ran::setup).toList());
      int round = ran.size();
      int begins = free(name);
      for (Wanted wanted : question.wanted()) {
        for (int i = 0; wanted.dog().equals(name) && i < wanted.turns(); i++) {
          if (ran.remove(wanted.setup())) {
            continue;
          }
          if (begins + question.pace().turn() <= question.seconds()) {
            due.add(new Due(round++, dog, wanted.setup()));
            if (!setups.contains(wanted.setup())) {
              setups.add(wanted.setup());
            }
            begins += question.pace().turn() + question.pace().rest();
          }
        }
      }
    }
    due.sort(Comparator.comparingInt(Due::round));
  }

  static Best of(RunningQuestion question, Carrying carrying) {
    return new EveryOrder(question, carrying).tried();
  }

  private int free(String dog) {
    int free = question.comes().getOrDefault(dog, 0);
    for (Ran ran : question.ran()) {
      if (ran.dog().equals(dog)) {
        free = Math.max(free, ran.ended() + question.pace().rest());
      }
    }
    return Math.max(0, free);
  }

  private Best tried() {
    for (int count = due.size(); count > 0; count--) {
      taken = due.subList(0, count);
      // The largest of these parts of the time for which something ends in time.
      List<Double> parts =
          question.poleSets().size() == 1 ? List.of(1.0) : List.of(1.0, 0.75, 0.5, 0.25);
      for (double part : parts) {
        busyMax = (int) (question.seconds() * part);
        tryAll();
        if (best != null) {
          return best;
        }
      }
    }
    return new Best(0, 0, 0, 0, List.of(), List.of());
  }

  private void tryAll() {
    least = Long.MAX_VALUE;
    shortest.clear();
    best = null;
    way = new ArrayList<>();
    question.poleSets().forEach(_ -> way.add(new ArrayList<>()));
    Set<Setup> wanted = new HashSet<>();
    taken.forEach(each -> wanted.add(each.setup()));
    layOut(0, wanted);
    for (List<List<Setup>> tour : shortest) {
      begin(tour);
    }
  }

  /** Extends the way on a pole set by every setup that is left, or goes on to the next pole set. */
  private void layOut(int poleSet, Set<Setup> left) {
    if (poleSet == way.size()) {
      if (left.isEmpty()) {
        weigh();
      }
      return;
    }
    layOut(poleSet + 1, left);
    for (Setup next : setups) {
      if (left.contains(next)) {
        Set<Setup> rest = new HashSet<>(left);
        rest.remove(next);
        way.get(poleSet).add(next);
        layOut(poleSet, rest);
        way.get(poleSet).removeLast();
      }
    }
  }

  private void weigh() {
    long metres = 0;
    for (int poleSet = 0; poleSet < way.size(); poleSet++) {
      Setup stands = question.poleSets().get(poleSet).stands();
      int place = way.get(poleSet).indexOf(stands);
      if (place > 0) {
        return;
      }
      int busy = 0;
      for (Setup setup : way.get(poleSet)) {
        busy += setup.equals(stands) ? 0 : question.pace().change();
        metres += setup.equals(stands) ? 0 : Math.round(1_000 * carrying.metres(stands, setup));
        for (Due each : taken) {
          busy += each.setup().equals(setup) ? question.pace().turn() : 0;
        }
        stands = setup;
      }
      if (busy > busyMax) {
        return;
      }
    }
    if (metres < least) {
      least = metres;
      shortest.clear();
    }
    if (metres == least) {
      shortest.add(way.stream().map(List::copyOf).toList());
    }
  }

  private void begin(List<List<Setup>> tour) {
    goOn(tour, new ArrayList<>(), new ArrayList<>(taken), 0);
  }

  private void goOn(List<List<Setup>> tour, List<Out> outs, List<Due> left, int waits) {
    if (left.isEmpty()) {
      int ends =
          outs.stream().mapToInt(out -> out.starts() + question.pace().turn()).max().orElseThrow();
      Best reached =
          new Best(outs.size(), least / 1_000.0, waits, ends, List.copyOf(outs), named(outs));
      if (ends <= question.seconds() && (best == null || ORDER.compare(reached, best) < 0)) {
        best = reached;
      }
      return;
    }
    Set<Due> tried = new HashSet<>();
    for (int i = 0; i < left.size(); i++) {
      Due next = left.get(i);
      if (!tried.add(new Due(0, next.dog(), next.setup()))) {
        continue;
      }
      int poleSet = 0;
      while (!tour.get(poleSet).contains(next.setup())) {
        poleSet++;
      }
      if (!isUp(tour.get(poleSet), next.setup(), left)) {
        continue;
      }
      int ready = readyFor(poleSet, next.setup(), outs);
      int starts = earliest(ready, poleSet, next.dog(), outs);
      Out last = outs.isEmpty() ? null : outs.getLast();
      if (last != null
          && (starts < last.starts() || (starts == last.starts() && poleSet < last.poleSet()))) {
        continue;
      }
      List<Due> rest = new ArrayList<>(left);
      rest.remove(i);
      outs.add(
          new Out(
              poleSet, setups.indexOf(next.setup()), next.dog(), had(next.dog(), outs), starts));
      goOn(tour, outs, rest, waits + starts - ready);
      outs.removeLast();
    }
  }

  private List<String> named(List<Out> outs) {
    return outs.stream()
        .map(
            out ->
                "%d: %s over %d poles on %d"
                    .formatted(
                        out.starts(),
                        question.dogs().get(out.dog()),
                        setups.get(out.setup()).poles(),
                        out.poleSet()))
        .toList();
  }

  private int had(int dog, List<Out> outs) {
    String name = question.dogs().get(dog);
    return (int)
        (question.ran().stream().filter(ran -> ran.dog().equals(name)).count()
            + outs.stream().filter(out -> out.dog() == dog).count());
  }

  /** Whether all that is laid out before a setup is through. */
  private static boolean isUp(List<Setup> way, Setup setup, List<Due> left) {
    List<Setup> before = way.subList(0, way.indexOf(setup));
    return left.stream().noneMatch(each -> before.contains(each.setup()));
  }

  private int readyFor(int poleSet, Setup setup, List<Out> outs) {
    Setup stands = question.poleSets().get(poleSet).stands();
    int done = 0;
    for (Out out : outs) {
      if (out.poleSet() == poleSet) {
        stands = setups.get(out.setup());
        done = out.starts() + question.pace().turn();
      }
    }
    return done + (setup.equals(stands) ? 0 : question.pace().change());
  }

  private int earliest(int ready, int poleSet, int dog, List<Out> outs) {
    String name = question.dogs().get(dog);
    int earliest = Math.max(ready, free(name));
    String last = null;
    int lastEnd = 0;
    for (Ran ran : question.ran()) {
      if (ran.poleSet().equals(question.poleSets().get(poleSet).name())) {
        last = ran.dog();
        lastEnd = ran.ended();
      }
    }
    for (Out out : outs) {
      int end = out.starts() + question.pace().turn();
      if (out.dog() == dog) {
        earliest = Math.max(earliest, end + question.pace().rest());
      }
      if (out.poleSet() == poleSet) {
        last = question.dogs().get(out.dog());
        lastEnd = end;
      }
    }
    if (last != null && question.apart().contains(new Following(name, last))) {
      earliest = Math.max(earliest, lastEnd + question.pace().turn());
    }
    while (!somebodyIsFree(outs, earliest)) {
      earliest++;
    }
    return earliest;
  }

  /** Whether there is an instructor for all of a turn, second by second. */
  private boolean somebodyIsFree(List<Out> outs, int starts) {
    for (int second = starts; second < starts + question.pace().turn(); second++) {
      int at = second;
      long out =
          outs.stream()
              .filter(o -> o.starts() <= at && at < o.starts() + question.pace().turn())
              .count();
      if (out >= question.instructors()) {
        return false;
      }
    }
    return true;
  }
}
