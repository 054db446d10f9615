package dev.poleward.domain.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultUndirectedWeightedGraph;
import org.jgrapht.graph.DefaultWeightedEdge;

/**
 * What is carried where, when one setup follows another. Pole 1 stays, and so does either the line
 * of poles or the lead-in. A piece becomes the nearest of its kind, such that all together are
 * carried least (the assignment problem), and nothing is carried twice.
 *
 * @param stays what stays beside pole 1
 * @param moves one for each piece, those that are carried farthest first
 */
public record Moves(Stays stays, List<Move> moves) {

  /** Metres within which a piece stands where it should. */
  public static final double IN_PLACE = 0.005;

  /** What is left where it stands, beside pole 1. */
  public enum Stays {
    /** The lead-in goes round. */
    POLES,
    /** The line turns about pole 1. */
    LEAD_IN
  }

  /** Keeps the moves from changing. */
  public Moves {
    moves = List.copyOf(moves);
  }

  /** The moves that carry least, whatever stays; where it makes no difference the poles stay. */
  public static Moves between(Pieces from, Pieces to) {
    Moves polesStay = between(from, to, Stays.POLES);
    Moves leadInStays = between(from, to, Stays.LEAD_IN);
    return leadInStays.metres() < polesStay.metres() - IN_PLACE ? leadInStays : polesStay;
  }

  /** The moves that carry least, while this stays. */
  public static Moves between(Pieces from, Pieces to, Stays stays) {
    Pieces onTheSameGround =
        switch (stays) {
          case POLES -> to;
          case LEAD_IN -> to.turned(turnThatKeepsTheLeadIn(from, to));
        };
    List<Move> moves = new ArrayList<>();
    for (Piece.Kind kind : Piece.Kind.values()) {
      // Nothing is carried to where a dog is put.
      if (kind != Piece.Kind.START) {
        moves.addAll(ofKind(named(from, kind), named(onTheSameGround, kind)));
      }
    }
    moves.sort(Comparator.comparingDouble((Move move) -> metres(move)).reversed());
    return new Moves(stays, moves);
  }

  private static double turnThatKeepsTheLeadIn(Pieces from, Pieces to) {
    if (from.start() == null || to.start() == null) {
      return 0;
    }
    return Spot.POLE_1.towards(from.start().spot()).degrees()
        - Spot.POLE_1.towards(to.start().spot()).degrees();
  }

  private static List<Piece> named(Pieces pieces, Piece.Kind kind) {
    return pieces.all().stream().filter(piece -> piece.kind() == kind).toList();
  }

  private static List<Move> ofKind(List<Piece> from, List<Piece> to) {
    List<Move> moves = new ArrayList<>();
    Set<Piece> left = new LinkedHashSet<>(from);
    Set<Piece> missing = new LinkedHashSet<>(to);
    nearest(from, to)
        .forEach(
            (piece, place) -> {
              left.remove(piece);
              missing.remove(place);
              moves.add(carry(piece, place));
            });
    left.forEach(piece -> moves.add(new Move.TakeAway(piece)));
    missing.forEach(place -> moves.add(new Move.Bring(place)));
    return moves;
  }

  private static Move.Carry carry(Piece piece, Piece place) {
    double metres = piece.spot().distanceTo(place.spot());
    return new Move.Carry(piece, place, metres < IN_PLACE ? 0 : metres);
  }

  /** Which piece becomes which; as many as there are of the fewer. */
  private static Map<Piece, Piece> nearest(List<Piece> from, List<Piece> to) {
    Map<Piece, Piece> pairs = new LinkedHashMap<>();
    if (from.isEmpty() || to.isEmpty()) {
      return pairs;
    }
    int all = Math.max(from.size(), to.size());
    Graph<Integer, DefaultWeightedEdge> graph =
        new DefaultUndirectedWeightedGraph<>(DefaultWeightedEdge.class);
    Set<Integer> pieces = new LinkedHashSet<>();
    Set<Integer> places = new LinkedHashSet<>();
    for (int i = 0; i < all; i++) {
      graph.addVertex(i);
      graph.addVertex(all + i);
      pieces.add(i);
      places.add(all + i);
    }
    for (int i = 0; i < all; i++) {
      for (int j = 0; j < all; j++) {
        DefaultWeightedEdge edge = graph.addEdge(i, all + j);
        // Who is left over costs nothing: the store is not known.
        boolean both = i < from.size() && j < to.size();
        graph.setEdgeWeight(edge, both ? from.get(i).spot().distanceTo(to.get(j).spot()) : 0);
      }
    }
    List<DefaultWeightedEdge> chosen =
        List.copyOf(
            new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, pieces, places)
                .getMatching()
                .getEdges());
    for (int i = 0; i < from.size(); i++) {
      for (DefaultWeightedEdge edge : chosen) {
        int place = graph.getEdgeTarget(edge) - all;
        if (graph.getEdgeSource(edge) == i && place < to.size()) {
          pairs.put(from.get(i), to.get(place));
        }
      }
    }
    return pairs;
  }

  /** Metres that pieces are carried in all. */
  public double metres() {
    return moves.stream().mapToDouble(Moves::metres).sum();
  }

  private static double metres(Move move) {
    return switch (move) {
      case Move.Carry carry -> carry.metres();
      case Move.Bring _, Move.TakeAway _ -> 0;
    };
  }
}
