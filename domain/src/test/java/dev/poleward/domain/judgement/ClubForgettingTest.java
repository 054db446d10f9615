package dev.poleward.domain.judgement;

import static dev.poleward.domain.event.Outcome.CLEAN;
import static dev.poleward.domain.event.Outcome.MISSED_ENTRY;
import static dev.poleward.domain.history.Tell.dogAmended;
import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Tell.merged;
import static dev.poleward.domain.judgement.ClubInTraining.endOf;
import static dev.poleward.domain.judgement.ClubInTraining.expected;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.history.Told;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.View;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A dog of which little is known is expected to forget as the other dogs of its club do. */
class ClubForgettingTest {

  private static final int LATER = 100;

  /** Juniper learned the drill on day 0; the other dogs came back to it for two months. */
  private static ClubInTraining clubThat(Outcome cameBackTo) {
    ClubInTraining club = new ClubInTraining().dog("juniper");
    for (String other : List.of("alder", "bramble", "clover", "dock")) {
      club.comesBack(other, cameBackTo);
    }
    return club;
  }

  private static Instant due(ClubInTraining club) {
    return Objects.requireNonNull(club.standing("juniper", LATER).pools().getFirst().dueOn());
  }

  @Test
  void inAClubThatForgetsFastANewDogIsDueSooner() {
    ClubInTraining alone = new ClubInTraining().dog("juniper");
    ClubInTraining fast = clubThat(MISSED_ENTRY);
    ClubInTraining slow = clubThat(CLEAN);

    assertThat(Duration.between(Told.START, due(alone)).toDays()).isEqualTo(30);
    assertThat(due(fast)).isBefore(Told.START.plus(Duration.ofDays(10)));
    assertThat(due(slow)).isAfter(due(alone));
  }

  @Test
  void theAnswerSaysWhatItRestsOn() {
    Forgetting forgetting = clubThat(MISSED_ENTRY).standing("juniper", LATER).forgetting();

    assertThat(forgetting.returns()).isZero();
    assertThat(forgetting.ownShare()).isZero();
    assertThat(forgetting.club().dogs()).isEqualTo(4);
    assertThat(forgetting.club().returns()).isEqualTo(24);
    assertThat(forgetting.dueAfterDays()).isEqualTo(forgetting.clubDueAfterDays());
  }

  @Test
  void theMoreItComesBackTheMoreOfTheAnswerIsItsOwn() {
    ClubInTraining club = clubThat(MISSED_ENTRY);
    double before = club.standing("juniper", LATER).forgetting().ownShare();
    for (int day = 20; day <= LATER; day += 20) {
      Forgetting after = club.back("juniper", day, CLEAN).standing("juniper", LATER).forgetting();

      assertThat(after.returns()).isEqualTo(day / 20);
      assertThat(after.ownShare()).isGreaterThan(before).isLessThan(1);
      assertThat(after.retention().shareAfter(30))
          .isGreaterThan(after.club().expected().shareAfter(30));
      before = after.ownShare();
    }
  }

  @Test
  void guestsSayNothing() {
    ClubInTraining club = new ClubInTraining().dog("juniper");
    club.guest("visitor").back("visitor", 10, MISSED_ENTRY).back("visitor", 20, MISSED_ENTRY);

    assertThat(club.expected("juniper", LATER)).isEqualTo(ClubRetention.UNKNOWN);

    club.and(dogAmended("visitor", new DogTraits(null, null, null, null, false)));
    assertThat(club.expected("juniper", LATER).dogs()).isEqualTo(1);
  }

  @Test
  void aDogWithTwoRegistrationsIsHeardOnce() {
    ClubInTraining once = new ClubInTraining().dog("juniper").comesBack("alder", MISSED_ENTRY);
    ClubRetention before = once.expected("juniper", LATER);

    once.and(dogRegistered("alder-again"), merged("alder-again", "alder"));
    once.back("alder-again", 70, MISSED_ENTRY);

    ClubRetention after = once.expected("juniper", LATER);
    assertThat(after.dogs()).isEqualTo(1);
    assertThat(after.returns()).isEqualTo(before.returns() + 1);
  }

  /** Under whichever of its registrations it is asked for. */
  @Test
  void whatADogDidItselfIsNotHeardAsItsClub() {
    ClubInTraining club = new ClubInTraining().comesBack("alder", MISSED_ENTRY);
    club.and(dogRegistered("alder-again"), merged("alder-again", "alder"));

    assertThat(club.expected("alder", LATER)).isEqualTo(ClubRetention.UNKNOWN);
    assertThat(club.expected("alder-again", LATER)).isEqualTo(ClubRetention.UNKNOWN);
  }

  @Test
  void whatOthersDoOnTheDayIsHeardOnTheNext() {
    ClubInTraining club = new ClubInTraining().dog("juniper").dog("alder");
    ClubRetention before = club.expected("juniper", 20);
    club.back("alder", 20, MISSED_ENTRY);

    assertThat(club.expected("juniper", 20)).isEqualTo(before);
    assertThat(club.expected("juniper", 21).returns()).isEqualTo(1);
  }

  @Test
  void aLookBackHearsWhatHadHappenedOrWasKnown() {
    List<Fact<?>> facts = clubThat(MISSED_ENTRY).facts();
    Instant day25 = endOf(25);
    Instant recorded = facts.getLast().recorded();

    assertThat(expected(facts, new View(day25, null), "juniper", LATER).returns()).isEqualTo(8);
    assertThat(expected(facts, new View(null, recorded), "juniper", LATER).returns()).isEqualTo(24);
    assertThat(
            expected(facts, new View(null, recorded.minusSeconds(1)), "juniper", LATER).returns())
        .isEqualTo(24);
    // The last eight reps are dock's on day 60.
    assertThat(
            expected(facts, new View(null, recorded.minus(Duration.ofMinutes(8))), "juniper", LATER)
                .returns())
        .isEqualTo(23);
  }

  @Test
  void noMoreDogsAreHeardThanAreSaid() {
    ClubInTraining club = new ClubInTraining().dog("a-juniper");
    for (int dog = 0; dog < ClubForgetting.HEARD_MAX + 3; dog++) {
      String name = "dog-%03d".formatted(dog);
      club.dog(name).back(name, 10, MISSED_ENTRY);
    }

    assertThat(club.expected("a-juniper", LATER).dogs()).isEqualTo(ClubForgetting.HEARD_MAX);
    // One that would be heard itself: another is heard in its place.
    assertThat(club.expected("dog-000", LATER).dogs()).isEqualTo(ClubForgetting.HEARD_MAX);
  }

  /** Set semantics, on a club that has something to say. */
  @Test
  void orderAndRepetitionDoNotShow() {
    List<Fact<?>> facts = clubThat(MISSED_ENTRY).facts();
    ClubRetention told = expected(facts, View.EVERYTHING, "juniper", LATER);
    assertThat(told.dogs()).isEqualTo(4);
    Random random = new Random(5);
    for (int i = 0; i < 20; i++) {
      List<Fact<?>> muddled = new ArrayList<>(facts);
      muddled.addAll(facts.subList(0, random.nextInt(facts.size())));
      Collections.shuffle(muddled, random);

      assertThat(expected(muddled, View.EVERYTHING, "juniper", LATER)).isEqualTo(told);
    }
  }
}
