package dev.poleward.domain.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.layout.Moves.Stays;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What is carried from one setup to the next. */
class MovesTest {

  private static final double JUMP_WIDTH = 1.2;

  @Test
  void nothingIsCarriedToWhereEverythingStands() {
    Moves moves = Moves.between(tunnel(4, 0.6, 45), tunnel(4, 0.6, 45));

    assertThat(moves.metres()).isZero();
    assertThat(moves.moves()).hasSize(5).allMatch(Move.Carry.class::isInstance);
  }

  /** Chords of 0.6, 1.2 and 1.8 m about pole 1 at 60 degrees are as long as the radii [D]. */
  @Test
  void turningTheLineCarriesEachPoleItsChord() {
    Moves moves = Moves.between(tunnel(4, 0.6, 0), tunnel(4, 0.6, 60), Stays.LEAD_IN);

    assertThat(moves.metres()).isCloseTo(0.6 + 1.2 + 1.8, within(1e-9));
    assertThat(carried(moves, "tunnel-exit")).isZero();
    assertThat(carried(moves, "pole-1")).isZero();
    assertThat(carried(moves, "pole-4")).isCloseTo(1.8, within(1e-9));
  }

  /** The tunnel goes round a chord of 5 m, which is farther than all poles together [D]. */
  @Test
  void whatCarriesLessIsChosen() {
    Moves moves = Moves.between(tunnel(4, 0.6, 0), tunnel(4, 0.6, 60));

    assertThat(moves.stays()).isEqualTo(Stays.LEAD_IN);
    assertThat(Moves.between(tunnel(12, 0.6, 0), tunnel(12, 0.6, 60)).stays())
        .isEqualTo(Stays.POLES);
    assertThat(Moves.between(tunnel(12, 0.6, 0), tunnel(12, 0.6, 60)).metres())
        .isCloseTo(5, within(1e-9));
  }

  /** The lead-in keeps its direction, and is carried from 5 to 6.5 m all the same [D]. */
  @Test
  void aLeadInThatShallStandFartherOffIsCarried() {
    Pieces nearer = tunnel(4, 0.6, 45);
    Pieces farther =
        Pieces.of(
            new Setup(
                4,
                0.6,
                LeadIn.TUNNEL,
                6.5,
                new Approach(new EntryAngle(45), null),
                null,
                null,
                null),
            5,
            JUMP_WIDTH);

    assertThat(Moves.between(nearer, farther).metres()).isCloseTo(1.5, within(1e-9));
  }

  /** Six poles at 0.6 m become four at 0.9: those at 0 and 1.8 stay, the others go 0.3 m [D]. */
  @Test
  void aPoleBecomesTheNearest() {
    Moves moves = Moves.between(bare(6, 0.6), bare(4, 0.9));

    assertThat(moves.metres()).isCloseTo(0.3 + 0.3, within(1e-9));
    assertThat(moves.moves().stream().filter(Move.TakeAway.class::isInstance)).hasSize(2);
  }

  @Test
  void whatIsMissingIsBrought() {
    Moves moves = Moves.between(bare(4, 0.6), jump(6, 0.6, 30));

    assertThat(
            moves.moves().stream()
                .filter(Move.Bring.class::isInstance)
                .map(move -> ((Move.Bring) move).to().name()))
        .containsExactlyInAnyOrder("pole-5", "pole-6", "jump-left", "jump-right");
    assertThat(moves.metres()).isZero();
  }

  /** Against every way to hand out the places, up to seven poles [D]. */
  @Test
  void noOtherWayCarriesLess() {
    Random random = new Random(7);
    for (int i = 0; i < 300; i++) {
      Pieces from = bare(2 + random.nextInt(6), 0.5 + random.nextDouble() * 0.3);
      Pieces to = bare(2 + random.nextInt(6), 0.5 + random.nextDouble() * 0.3);
      Pieces turned = to.turned(random.nextDouble() * 180);

      Moves moves = Moves.between(from, turned, Stays.POLES);

      assertThat(moves.metres())
          .isCloseTo(least(from.all(), turned.all()), within(Moves.IN_PLACE * 7));
      assertNothingIsCarriedTwice(moves);
    }
  }

  private static void assertNothingIsCarriedTwice(Moves moves) {
    Set<String> left = new HashSet<>();
    Set<String> taken = new HashSet<>();
    for (Move move : moves.moves()) {
      switch (move) {
        case Move.Carry carry -> {
          assertThat(left.add(carry.from().name())).isTrue();
          assertThat(taken.add(carry.to().name())).isTrue();
        }
        case Move.TakeAway away -> assertThat(left.add(away.from().name())).isTrue();
        case Move.Bring bring -> assertThat(taken.add(bring.to().name())).isTrue();
      }
    }
  }

  private static double least(List<Piece> from, List<Piece> to) {
    return from.size() <= to.size()
        ? least(from, new ArrayList<>(to), 0)
        : least(to, new ArrayList<>(from), 0);
  }

  private static double least(List<Piece> fewer, List<Piece> free, int next) {
    if (next == fewer.size()) {
      return 0;
    }
    double least = Double.MAX_VALUE;
    for (int i = 0; i < free.size(); i++) {
      Piece place = free.remove(i);
      double here = fewer.get(next).spot().distanceTo(place.spot());
      least = Math.min(least, here + least(fewer, free, next + 1));
      free.add(i, place);
    }
    return least;
  }

  private static double carried(Moves moves, String name) {
    return moves.moves().stream()
        .filter(Move.Carry.class::isInstance)
        .map(Move.Carry.class::cast)
        .filter(carry -> carry.from().name().equals(name))
        .mapToDouble(Move.Carry::metres)
        .findFirst()
        .orElseThrow();
  }

  private static Pieces bare(int poles, double spacing) {
    return pieces(poles, spacing, LeadIn.NONE, null);
  }

  private static Pieces tunnel(int poles, double spacing, double angle) {
    return pieces(poles, spacing, LeadIn.TUNNEL, new Approach(new EntryAngle(angle), null));
  }

  private static Pieces jump(int poles, double spacing, double angle) {
    return pieces(poles, spacing, LeadIn.JUMP, new Approach(new EntryAngle(angle), null));
  }

  private static Pieces pieces(
      int poles, double spacing, LeadIn leadIn, @Nullable Approach approach) {
    return Pieces.of(
        new Setup(poles, spacing, leadIn, 5.0, approach, null, null, null), 5, JUMP_WIDTH);
  }
}
