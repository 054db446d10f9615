package dev.poleward.domain.running;

import java.util.Arrays;

/**
 * What no tour goes below. The ways on all pole sets together are a tree on the setups and one root
 * for what stands, in which no setup has more than two edges and the root none more than there are
 * pole sets. The least tree without that is no longer; prices on edges of setups that have too many
 * make it longer, and it stays a lower bound at any prices from 0 (Held and Karp, The
 * traveling-salesman problem and minimum spanning trees, 1970 and 1971).
 */
final class SpanningBound {

  private static final int ROUNDS = 300;

  /** Rounds without gain after which prices move by half. */
  private static final int PATIENCE = 10;

  /** Below this a sum of doubles is not told apart from a whole number. */
  private static final double ROUNDING = 1e-4;

  private final double[][] cost;
  private final int[] edgesMax;
  private final double[] price;
  private final int[] edges;
  private final int root;

  private SpanningBound(Distances distances, int poleSets) {
    this.root = distances.setups();
    this.cost = new double[root + 1][root + 1];
    for (int one = 0; one < root; one++) {
      for (int other = 0; other < root; other++) {
        cost[one][other] =
            Math.min(distances.between()[one][other], distances.between()[other][one]);
      }
      long first = Long.MAX_VALUE;
      for (int poleSet = 0; poleSet < poleSets; poleSet++) {
        first = Math.min(first, distances.from(poleSet, Lesson.NONE, one));
      }
      cost[root][one] = first;
      cost[one][root] = first;
    }
    this.edgesMax = new int[root + 1];
    Arrays.fill(edgesMax, 2);
    edgesMax[root] = poleSets;
    this.price = new double[root + 1];
    this.edges = new int[root + 1];
  }

  /**
   * Millimetres that no tour goes below.
   *
   * @param found by some tour: how far there is to go
   */
  static long of(Distances distances, int poleSets, long found) {
    return new SpanningBound(distances, poleSets).raised(found);
  }

  private long raised(long found) {
    double best = 0;
    double reach = 2;
    int idle = 0;
    for (int round = 0; round < ROUNDS; round++) {
      double bound = leastTree();
      idle = bound > best + ROUNDING ? 0 : idle + 1;
      best = Math.max(best, bound);
      if (idle > PATIENCE) {
        idle = 0;
        reach /= 2;
      }
      int excess = 0;
      for (int node = 0; node <= root; node++) {
        int over = edges[node] - edgesMax[node];
        excess += price[node] > 0 || over > 0 ? over * over : 0;
      }
      if (excess == 0 || best >= found) {
        break;
      }
      double step = reach * Math.max(found - bound, 1) / excess;
      for (int node = 0; node <= root; node++) {
        price[node] = Math.max(0, price[node] + step * (edges[node] - edgesMax[node]));
      }
    }
    return Math.min(found, (long) Math.ceil(best - ROUNDING));
  }

  /** The least tree at today's prices, less what the prices allow; counts its edges. */
  private double leastTree() {
    boolean[] in = new boolean[root + 1];
    double[] nearest = new double[root + 1];
    int[] to = new int[root + 1];
    Arrays.fill(nearest, Double.POSITIVE_INFINITY);
    Arrays.fill(edges, 0);
    double sum = 0;
    int joined = root;
    in[root] = true;
    for (int count = 0; count < root; count++) {
      int next = root;
      for (int node = 0; node < root; node++) {
        if (in[node]) {
          continue;
        }
        double priced = cost[joined][node] + price[joined] + price[node];
        if (priced < nearest[node]) {
          nearest[node] = priced;
          to[node] = joined;
        }
        if (next == root || nearest[node] < nearest[next]) {
          next = node;
        }
      }
      sum += nearest[next];
      edges[next]++;
      edges[to[next]]++;
      in[next] = true;
      joined = next;
    }
    for (int node = 0; node <= root; node++) {
      sum -= edgesMax[node] * price[node];
    }
    return sum;
  }
}
