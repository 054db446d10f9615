package dev.poleward.domain.report;

import static dev.poleward.domain.history.Tell.barePoles;
import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Tell.joined;
import static dev.poleward.domain.history.Tell.left;
import static dev.poleward.domain.history.Tell.merged;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.report.ReportedClass.EVENING;
import static dev.poleward.domain.report.ReportedClass.day;
import static dev.poleward.domain.report.ReportedClass.follows;
import static dev.poleward.domain.report.ReportedClass.stage;
import static dev.poleward.domain.report.ReportedClass.withGrid;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.care.DogLimits;
import dev.poleward.domain.event.DogEvent.DogRested;
import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.Stride;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.programme.Stage;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The whole club on one day. */
class OverviewTest {

  private static final DogTraits GROWN =
      new DogTraits(LocalDate.parse("2020-01-01"), null, null, null, null);

  private static ReportedClass club(String... dogs) {
    ReportedClass club =
        withGrid(
            List.of(stage("front", List.of(), "12:00"), stage("side", List.of("front"), "3:00")));
    for (String dog : dogs) {
      club.and(dogRegistered(dog, GROWN).at(-7), follows(dog, -6));
    }
    return club;
  }

  private static Overview on(ReportedClass club, int day) {
    return Overview.of(club.sources(day, day), "", Overview.DOGS_MAX);
  }

  private static DogGlance only(ReportedClass club, int day) {
    List<DogGlance> dogs = on(club, day).dogs();
    assertThat(dogs).hasSize(1);
    return dogs.getFirst();
  }

  @Test
  void dogsAreCountedByStageAndThoseThatAreThroughLast() {
    ReportedClass club =
        club("bramble", "juniper", "sorrel", "tansy")
            .ran("juniper", "s-1", 1, 0, 0, 5, 0)
            .ran("sorrel", "s-1", 1, 10, 0, 5, 0)
            .ran("sorrel", "s-1", 1, 20, 90, 5, 0);

    Overview overview = on(club, 2);

    assertThat(overview.stages())
        .extracting(count -> count.stage().map(Stage::id).orElse("through") + " " + count.dogs())
        .containsExactly("front [bramble, tansy]", "side [juniper]", "through [sorrel]");
    assertThat(overview.dogs())
        .extracting(DogGlance::dog)
        .containsExactly("bramble", "juniper", "sorrel", "tansy");
    // As it was then.
    assertThat(on(club, 0).stages()).hasSize(1);
  }

  @Test
  void guestsStandApartAndOneAnimalIsToldOnce() {
    ReportedClass club =
        club("juniper")
            .and(
                dogRegistered("juniper-2").at(-5),
                merged("juniper-2", "juniper").at(-4),
                dogRegistered("visitor", new DogTraits(null, null, null, null, true)).at(-3))
            .ran("juniper-2", "s-1", 1, 0, 0, 3, 1);

    Overview overview = on(club, 2);

    assertThat(overview.dogs()).extracting(DogGlance::dog).containsExactly("juniper");
    assertThat(overview.dogs().getFirst().reps()).isEqualTo(4);
    assertThat(overview.guests()).extracting(DogGlance::dog).containsExactly("visitor");
    assertThat(overview.stages()).hasSize(1);
    assertThat(overview.guests().getFirst().limits().age()).isEqualTo(DogLimits.Age.UNKNOWN);
  }

  @Test
  void aDogIsUntrainedAfterSoManyDaysOrWithoutReps() {
    ReportedClass club = club("juniper").ran("juniper", "s-1", 1, 0, 0, 1, 0);

    assertThat(only(club, 0).lastTrained()).isNull();
    assertThat(only(club, 0).isUntrained(3_650)).isTrue();
    assertThat(only(club, 22).lastTrained()).isEqualTo(day(1));
    assertThat(only(club, 22).daysSince()).isEqualTo(21);
    assertThat(only(club, 22).isUntrained(21)).isTrue();
    assertThat(only(club, 21).isUntrained(21)).isFalse();
  }

  @Test
  void whatSlipsAndIsDueIsCounted() {
    ReportedClass club = club("juniper").ran("juniper", "s-1", 1, 0, 0, 5, 0);
    ReportedClass slips =
        club("juniper").ran("juniper", "s-1", 1, 0, 0, 5, 0).ran("juniper", "s-1", 2, 0, 0, 0, 12);

    assertThat(only(club, 2).due()).isZero();
    assertThat(only(club, 90).due()).isEqualTo(1);
    assertThat(only(slips, 2).slipping()).isEqualTo(1);
    assertThat(only(slips, 1).slipping()).isZero();
  }

  @Test
  void aRestShowsWhileItLasts() {
    ReportedClass club =
        club("juniper")
            .and(Happening.of(new DogRested("juniper", "lame", day(5))).at(ReportedClass.on(2, 0)));

    assertThat(only(club, 1).isResting()).isFalse();
    assertThat(only(club, 4).isResting()).isTrue();
    assertThat(only(club, 5).isResting()).isFalse();
  }

  @Test
  void angleWorkIsSuspendedWhileADogHops() {
    List<Happening> reps = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      Stride stride = i < 20 ? Stride.SINGLE : Stride.HOP;
      reps.add(
          rep("r-" + i, said -> said.over(barePoles(4)).from(0).stride(stride))
              .at(ReportedClass.on(1, i)));
    }
    ReportedClass club = club("juniper").and(reps.toArray(Happening[]::new));

    assertThat(only(club, 2).angleWork()).isFalse();
    assertThat(only(club, 0).angleWork()).isTrue();
  }

  @Test
  void theLastSevenDaysAreHeldAgainstTheLimit() {
    // 3 gaps each; the club's limit is 240 in seven days.
    ReportedClass club =
        club("juniper").ran("juniper", "s-1", 1, 0, 0, 60, 0).ran("juniper", "s-1", 5, 0, 0, 21, 0);

    assertThat(only(club, 6).week().gaps()).isEqualTo(243);
    assertThat(only(club, 6).isOverLoad()).isTrue();
    assertThat(only(club, 9).week().gaps()).isEqualTo(63);
    assertThat(only(club, 9).isOverLoad()).isFalse();
  }

  @Test
  void classesComeWithTheirMembersOfTheDay() {
    ReportedClass club =
        club("bramble", "juniper")
            .and(
                joined(EVENING, "bramble").at(ReportedClass.on(1, 0)),
                joined(EVENING, "juniper").at(ReportedClass.on(1, 0)),
                left(EVENING, "bramble").at(ReportedClass.on(3, 0)));

    assertThat(on(club, 0).classes().getFirst().members()).isZero();
    assertThat(on(club, 1).classes().getFirst().members()).isEqualTo(2);
    assertThat(on(club, 3).classes().getFirst().members()).isEqualTo(1);
    assertThat(on(club, 3).moreClasses()).isFalse();
  }

  @Test
  void pagesGoOnAfterTheLastDog() {
    ReportedClass club = club("a", "b", "c", "d", "e").and(merged("c", "d").at(-1));
    List<String> seen = new ArrayList<>();

    String after = "";
    int pages = 0;
    while (after != null) {
      Overview page = Overview.of(club.sources(2, 2), after, 2);
      page.dogs().forEach(dog -> seen.add(dog.dog()));
      after = page.next().orElse(null);
      pages++;
    }

    assertThat(seen).containsExactly("a", "b", "d", "e");
    assertThat(pages).isEqualTo(2);
  }
}
