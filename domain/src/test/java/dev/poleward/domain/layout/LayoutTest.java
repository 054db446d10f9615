package dev.poleward.domain.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.layout.LayoutQuestion.Ground;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A setup on the ground. */
class LayoutTest {

  private static final int LAYOUTS = 10_000;
  private static final int ANY_LAYOUTS = 2_000;

  /** Clockwise is to the left of the line, looking the way the dog runs: entry side pole. */
  @ParameterizedTest
  @CsvSource({
    "0, 0, -5",
    "90, -5, 0",
    "-90, 5, 0",
    "45, -3.5355, -3.5355",
    "150, -2.5, 4.3301",
    "-150, 2.5, 4.3301"
  })
  void theLeadInStandsWhereTheClockSays(double angle, double x, double y) {
    Spot exit = layout(setup(4, LeadIn.TUNNEL, angle, 5)).pieces().leadIn().getFirst().spot();

    assertThat(exit.x()).isCloseTo(x, within(1e-4));
    assertThat(exit.y()).isCloseTo(y, within(1e-4));
  }

  @Test
  void aJumpHasItsWingsAtTheDogsLeftAndRight() {
    List<Piece> wings = layout(setup(4, LeadIn.JUMP, 0, 5)).pieces().leadIn();

    assertThat(wings)
        .containsExactly(
            new Piece(Piece.Kind.WING, "jump-left", new Spot(-0.6, -5)),
            new Piece(Piece.Kind.WING, "jump-right", new Spot(0.6, -5)));
  }

  /** Read to the millimetre, the tapes lead back to within 5 mm, for any layout. */
  @Test
  void theTapeSheetLeadsBack() {
    Random random = new Random(2026);
    double worst = 0;
    for (int i = 0; i < LAYOUTS; i++) {
      Setup setup =
          new Setup(
              2 + random.nextInt(23),
              0.4 + 0.6 * random.nextDouble(),
              LeadIn.values()[random.nextInt(3)],
              0.5 + 25 * random.nextDouble(),
              new Approach(new EntryAngle(358 * random.nextDouble() - 179), null),
              null,
              360 * random.nextDouble() - 180,
              null);
      Pieces pieces = Pieces.of(setup, 5, 1.2);
      BoundedPath path =
          pieces.start() == null
              ? null
              : DogsPath.of(pieces.line(), pieces.start(), 0.5 + random.nextDouble()).orElse(null);
      Pegs pegs = PegChoice.of(pieces, path);
      for (Piece piece : pieces.all()) {
        Spot back = pegs.meet(pegs.tapesTo(piece.spot())).orElseThrow();
        worst = Math.max(worst, back.distanceTo(piece.spot()));
      }
    }

    assertThat(worst).isLessThan(0.005);
  }

  /** Whatever the contract allows can be laid out, and pegs keep off the dog's way. */
  @Test
  void whateverIsAllowedCanBeLaidOut() {
    Random random = new Random(64);
    for (int i = 0; i < ANY_LAYOUTS; i++) {
      boolean directed = random.nextInt(10) > 0;
      Setup setup =
          new Setup(
              2 + random.nextInt(23),
              0.3 + 1.2 * random.nextDouble(),
              directed ? LeadIn.values()[random.nextInt(3)] : LeadIn.NONE,
              random.nextInt(5) == 0 ? random.nextInt(3) * 25.0 : 50 * random.nextDouble(),
              directed
                  ? new Approach(new EntryAngle(359.8 * random.nextDouble() - 179.9), null)
                  : null,
              null,
              360 * random.nextDouble() - 180,
              null);
      double radius = 0.2 + 9.8 * random.nextDouble();
      double jumpWidth = 0.3 + 2.7 * random.nextDouble();
      Layout layout =
          Layout.of(
              new LayoutQuestion(
                  setup, null, null, null, null, null, radius, 1, jumpWidth, null, null));

      assertThat(layout.pieces().all()).hasSizeGreaterThanOrEqualTo(setup.poles());
      if (layout.path() != null) {
        for (Spot spot : layout.path().spots(0.1)) {
          assertThat(spot.distanceTo(layout.pegs().a())).isGreaterThan(0.99);
          assertThat(spot.distanceTo(layout.pegs().b())).isGreaterThan(0.99);
        }
      }
    }
  }

  /** No two places were free within 1.5 m of this one. */
  @Test
  void wherePegsFindNoPlaceNearbyTheyStandFartherOff() {
    Setup setup =
        new Setup(2, 1.5, LeadIn.JUMP, 0.1, at(91.87455478879696), null, -121.38063388792305, null);

    Layout layout =
        Layout.of(new LayoutQuestion(setup, null, null, null, null, null, 10, 1, 0.3, null, null));

    assertThat(layout.pegs().apart()).isPositive();
  }

  @Test
  void pegsStandOffTheLinesOfThePieces() {
    for (ClockPosition clock : List.of(new ClockPosition(12, false), new ClockPosition(4, true))) {
      Layout layout = layout(setup(6, LeadIn.TUNNEL, clock.angle().degrees(), 6));
      for (Spot peg : List.of(layout.pegs().a(), layout.pegs().b())) {
        assertThat(Math.abs(peg.x())).isGreaterThanOrEqualTo(1);
        assertThat(
                layout.pieces().all().stream()
                    .mapToDouble(piece -> piece.spot().distanceTo(peg))
                    .min()
                    .orElseThrow())
            .isGreaterThan(0.5);
      }
    }
  }

  @Test
  void aTunnelAtItsCustomaryDistanceNeedsNoWarning() {
    assertThat(layout(setup(4, LeadIn.TUNNEL, 45, 4.7)).warnings()).isEmpty();
  }

  @Test
  void whatStandsUncustomarilyIsWarnedOf() {
    assertThat(layout(setup(4, LeadIn.TUNNEL, 0, 3)).warnings())
        .containsExactly(new LayoutWarning.LeadInNear(3));
    assertThat(layout(setup(4, LeadIn.TUNNEL, 0, 12)).warnings())
        .containsExactly(new LayoutWarning.LeadInFar(12));
    assertThat(layout(setup(4, LeadIn.TUNNEL, 75, 4.6)).warnings())
        .hasSize(1)
        .first()
        .isInstanceOf(LayoutWarning.ShortRunIntoSharpEntry.class);
    assertThat(layout(new Setup(4, 0.6, LeadIn.TUNNEL, null, at(0), null, null, null)).warnings())
        .containsExactly(new LayoutWarning.LeadInDistanceAssumed(5));
  }

  /** Near 5:30 a jump stands beside the poles; by arithmetic 5 sin 165 = 1.29 m from the line. */
  @Test
  void aJumpBesideThePolesStandsInTheDogsLine() {
    assertThat(layout(setup(12, LeadIn.JUMP, 165, 5)).warnings())
        .anyMatch(
            warning ->
                warning instanceof LayoutWarning.PieceInDogsLine in
                    && in.piece().kind() == Piece.Kind.WING);
    assertThat(layout(setup(4, LeadIn.JUMP, 45, 5)).warnings())
        .noneMatch(LayoutWarning.PieceInDogsLine.class::isInstance);
  }

  @Test
  void aTurnTooTightForTheDogIsToldAndNoWayIsDrawn() {
    Layout layout =
        Layout.of(
            new LayoutQuestion(
                setup(12, LeadIn.TUNNEL, 150, 1.5),
                null,
                null,
                null,
                null,
                null,
                8,
                1,
                1.2,
                null,
                null));

    assertThat(layout.path()).isNull();
    assertThat(layout.warnings()).contains(new LayoutWarning.TurnTooTight(8));
  }

  @Test
  void spacingIsHeldAgainstTheBodysOwn() {
    Setup setup = setup(4, LeadIn.TUNNEL, 0, 5);

    assertThat(withRules(setup, RuleBody.FCI).warnings()).isEmpty();
    assertThat(withRules(setup, RuleBody.AKC).warnings())
        .containsExactly(new LayoutWarning.SpacingOutsideRules(RuleBody.AKC, 0.6));
  }

  /** Straight on from 5 m: 5 m, 1.8 m of poles and 2 m to run out are 8.8 m, and a metre around. */
  @Test
  void groundThatIsTooSmallIsWarnedOf() {
    Setup setup = setup(4, LeadIn.TUNNEL, 0, 5);

    Layout fits = on(setup, new Ground(12, 6, 1));
    Layout across = on(setup, new Ground(6, 12, 1));
    Layout tooSmall = on(setup, new Ground(7, 7, 1));

    assertThat(fit(fits).fits()).isTrue();
    assertThat(fit(across).fits()).isTrue();
    assertThat(fits.warnings()).isEmpty();
    assertThat(tooSmall.warnings())
        .hasSize(1)
        .first()
        .isInstanceOf(LayoutWarning.DoesNotFitTheGround.class);
  }

  /** A right-angled triangle of 8 m by 8 m fits a square of 8 by 8, and no smaller one [D]. */
  @Test
  void groundIsUsedTheWayThatFitsBest() {
    List<Spot> corners = List.of(new Spot(0, 0), new Spot(8, 0), new Spot(0, 8));

    assertThat(GroundFit.of(corners, 8, 8, 0).fits()).isTrue();
    assertThat(GroundFit.of(corners, 7.9, 7.9, 0).fits()).isFalse();
    // Along its long side: 11.32 m by 5.66 m.
    GroundFit slanting = GroundFit.of(corners, 11.4, 5.7, 0);
    assertThat(slanting.fits()).isTrue();
    assertThat(slanting.turnedBy() % 90).isEqualTo(45);
  }

  /** 2.113 m are 83.19 in, which is 6 ft 11 in; 15 ft are 4.572 m exactly [D]. */
  @ParameterizedTest
  @CsvSource({
    "2.113, 6 ft 11 in",
    "4.572, 15 ft 0 in",
    "4.585, 15 ft 0½ in",
    "0, 0 ft 0 in",
    "0.3047, 1 ft 0 in"
  })
  void metresAreReadInFeetAndInches(double metres, String read) {
    assertThat(FeetAndInches.ofMetres(metres).toString()).isEqualTo(read);
  }

  private static GroundFit fit(Layout layout) {
    return Objects.requireNonNull(layout.fit());
  }

  private static Layout layout(Setup setup) {
    return on(setup, null);
  }

  private static Layout on(Setup setup, @Nullable Ground ground) {
    return Layout.of(
        new LayoutQuestion(setup, null, null, null, ground, null, 1, 1, 1.2, null, null));
  }

  private static Layout withRules(Setup setup, RuleBody rules) {
    return Layout.of(
        new LayoutQuestion(setup, null, null, null, null, null, 1, 1, 1.2, rules, null));
  }

  private static Setup setup(int poles, LeadIn leadIn, double angle, double metres) {
    return new Setup(poles, 0.6, leadIn, metres, at(angle), null, null, null);
  }

  private static Approach at(double angle) {
    return new Approach(new EntryAngle(angle), null);
  }
}
