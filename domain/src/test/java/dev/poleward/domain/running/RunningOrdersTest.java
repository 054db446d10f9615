package dev.poleward.domain.running;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.running.RunningOrder.LeftOut;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Running orders of small classes that can be thought through by hand. */
class RunningOrdersTest {

  private static final Setup STRAIGHT = tunnel(0);
  private static final Setup LITTLE = tunnel(30);
  private static final Setup FAR = tunnel(60);

  private static final int TURN = 180;
  private static final int CHANGE = 120;
  private static final int REST = 180;

  private final List<Wanted> wanted = new ArrayList<>();
  private final Set<Following> apart = new HashSet<>();
  private final Map<String, Integer> comes = new HashMap<>();
  private final List<Ran> ran = new ArrayList<>();
  private List<PoleSet> poleSets = List.of(new PoleSet("main", null));
  private int instructors = 4;
  private int minutes = 60;

  private static Setup tunnel(double angle) {
    return new Setup(
        4, 0.6, LeadIn.TUNNEL, 5.0, new Approach(new EntryAngle(angle), null), null, null, null);
  }

  private RunningOrder order() {
    List<String> dogs = wanted.stream().map(Wanted::dog).distinct().toList();
    return RunningOrders.of(
        new RunningQuestion(
            dogs,
            wanted,
            poleSets,
            instructors,
            new Pace(TURN, CHANGE, REST),
            minutes * 60,
            apart,
            comes,
            ran),
        new SwungPoles());
  }

  private void wants(String dog, Setup... setups) {
    Stream.of(setups).forEach(setup -> wanted.add(new Wanted(dog, setup, 1)));
  }

  /** As {@code juniper at 0, moss at 180}. */
  private static List<String> turns(RunningOrder order, int poleSet) {
    return order.poleSets().get(poleSet).standings().stream()
        .flatMap(standing -> standing.turns().stream())
        .map(turn -> turn.dog() + " at " + turn.starts())
        .toList();
  }

  private static List<Setup> setups(RunningOrder order, int poleSet) {
    return order.poleSets().get(poleSet).standings().stream()
        .map(RunningOrder.Standing::setup)
        .toList();
  }

  @Test
  void whatStandsComesFirstAndAnglesGoOneWay() {
    poleSets = List.of(new PoleSet("main", FAR));
    wants("juniper", STRAIGHT, FAR);
    wants("moss", LITTLE, FAR);

    RunningOrder order = order();

    assertThat(setups(order, 0)).containsExactly(FAR, LITTLE, STRAIGHT);
    // Juniper begins, so that Moss comes to the second setup rested: 180 + 180 + 120.
    assertThat(turns(order, 0))
        .containsExactly("moss at 0", "juniper at 180", "moss at 480", "juniper at 780");
    assertThat(order.waited().amount()).isZero();
    assertThat(order.carried().isLeast()).isTrue();
    // Juniper alone has the tunnel come round by 60 degrees, Moss by 30 and back by 60 [D].
    assertThat(order.naive().metres()).isGreaterThan(order.carried().amount());
  }

  @Test
  void aDogRestsBetweenItsTurns() {
    wants("juniper", STRAIGHT, STRAIGHT);

    RunningOrder order = order();

    assertThat(turns(order, 0))
        .containsExactly("juniper at " + CHANGE, "juniper at " + (CHANGE + TURN + REST));
    assertThat(order.waited().amount()).isEqualTo(REST);
    assertThat(order.waited().isLeast()).isTrue();
  }

  @Test
  void aTurnStaysEmptyBetweenDogsThatMayNotFollowOneAnother() {
    wants("juniper", STRAIGHT);
    wants("moss", STRAIGHT);
    apart.add(new Following("moss", "juniper"));

    assertThat(turns(order(), 0)).containsExactly("moss at 120", "juniper at 300");

    apart.add(new Following("juniper", "moss"));

    assertThat(turns(order(), 0)).containsExactly("juniper at 120", "moss at 480");
    assertThat(order().waited().amount()).isEqualTo(TURN);
  }

  @Test
  void aSecondPoleSetIsUsedWhereTheTimeIsShort() {
    poleSets = List.of(new PoleSet("main", STRAIGHT), new PoleSet("far", null));
    wants("juniper", STRAIGHT, FAR);
    wants("moss", STRAIGHT, FAR);

    assertThat(order().poleSets().get(1).standings()).isEmpty();

    minutes = 11;

    assertThat(setups(order(), 0)).containsExactly(STRAIGHT);
    assertThat(setups(order(), 1)).containsExactly(FAR);
    assertThat(order().leftOut()).isEmpty();
  }

  @Test
  void oneInstructorIsWithOneDogAtATime() {
    poleSets = List.of(new PoleSet("main", STRAIGHT), new PoleSet("far", FAR));
    instructors = 1;
    wants("juniper", STRAIGHT);
    wants("moss", FAR);

    assertThat(turns(order(), 0)).containsExactly("juniper at 0");
    assertThat(turns(order(), 1)).containsExactly("moss at 180");
  }

  @Test
  void everybodysFirstTurnGoesBeforeAnybodysSecond() {
    poleSets = List.of(new PoleSet("main", STRAIGHT));
    minutes = 6;
    wants("juniper", STRAIGHT, STRAIGHT);
    wants("moss", STRAIGHT);

    RunningOrder order = order();

    assertThat(turns(order, 0)).containsExactly("juniper at 0", "moss at 180");
    assertThat(order.leftOut())
        .containsExactly(new LeftOut("juniper", STRAIGHT, LeftOut.Reason.RESTS_TOO_LONG));

    minutes = 9;
    wants("fern", STRAIGHT);

    assertThat(order().leftOut())
        .containsExactly(new LeftOut("juniper", STRAIGHT, LeftOut.Reason.TIME_IS_UP));
  }

  @Test
  void whatRanIsNotRunAgainAndCountsAsATurnAndForRests() {
    poleSets = List.of(new PoleSet("main", STRAIGHT));
    wants("juniper", STRAIGHT, STRAIGHT);
    wants("moss", STRAIGHT);
    ran.add(new Ran("juniper", "main", STRAIGHT, -60));

    RunningOrder order = order();

    assertThat(turns(order, 0)).containsExactly("moss at 0", "juniper at 180");

    minutes = 4;
    assertThat(turns(order(), 0)).containsExactly("moss at 0");
  }

  @Test
  void aDogThatIsLateRunsWhenItIsThere() {
    poleSets = List.of(new PoleSet("main", STRAIGHT));
    wants("juniper", STRAIGHT);
    wants("moss", STRAIGHT);
    comes.put("juniper", 150);

    assertThat(turns(order(), 0)).containsExactly("moss at 0", "juniper at 180");
  }

  @Test
  void polesAloneAreOneSetupWhereverTheDogStarts() {
    Setup bare = new Setup(4, 0.6, LeadIn.NONE, null, null, null, null, null);
    Setup fromTheSide =
        new Setup(
            4, 0.6, LeadIn.NONE, 2.0, new Approach(new EntryAngle(90), null), null, null, null);
    wants("juniper", bare);
    wants("moss", fromTheSide);

    RunningOrder order = order();

    assertThat(setups(order, 0)).containsExactly(bare);
    // Poles from pole 1 to their places: 0.6 + 1.2 + 1.8 [D].
    assertThat(order.carried().amount()).isEqualTo(3.6);
  }

  @Test
  void nothingIsRunWhereNobodyHasTimeOrNothingIsWanted() {
    assertThat(order().poleSets().getFirst().standings()).isEmpty();

    wants("juniper", STRAIGHT);
    minutes = 2;

    assertThat(order().poleSets().getFirst().standings()).isEmpty();
    assertThat(order().leftOut()).hasSize(1);
  }

  @Test
  void aLessonOfManySetupsHasEveryTurnOnceAndSaysHowNearItIs() {
    minutes = 480;
    for (int dog = 0; dog < 10; dog++) {
      for (int angle = 0; angle < 4; angle++) {
        wants("dog-" + dog, tunnel(4 * dog + 10 * angle));
      }
    }

    RunningOrder order = order();

    assertThat(turns(order, 0)).hasSize(40).doesNotHaveDuplicates();
    assertThat(setups(order, 0)).doesNotHaveDuplicates();
    assertThat(order.carried().atLeast())
        .isBetween(0.9 * order.carried().amount(), order.carried().amount());
    assertThat(order()).isEqualTo(order);
  }
}
