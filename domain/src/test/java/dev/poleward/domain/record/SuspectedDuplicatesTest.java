package dev.poleward.domain.record;

import static dev.poleward.domain.event.DogSide.LEFT;
import static dev.poleward.domain.event.DogSide.RIGHT;
import static dev.poleward.domain.event.Manoeuvre.RECALL;
import static dev.poleward.domain.event.Outcome.CLEAN;
import static dev.poleward.domain.event.Outcome.MISSED_ENTRY;
import static dev.poleward.domain.event.Outcome.VOID;
import static dev.poleward.domain.history.Tell.handlerRegistered;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Tell.withdrawn;
import static dev.poleward.domain.history.Told.givenTraining;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.history.Happening;
import dev.poleward.domain.history.RepTelling;
import java.time.Duration;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Reps that two phones may have logged. */
class SuspectedDuplicatesTest {

  private static List<SuspectedDuplicate> among(Duration within, Happening... told) {
    return SuspectedDuplicates.among(
        givenTraining(told).whenAsked().placement().inSession("s-1"), within);
  }

  /** Pairs within two minutes, as {@code first-second}. */
  private static List<String> pairs(Happening... told) {
    return among(Duration.ofMinutes(2), told).stream()
        .map(each -> each.first().rep() + " " + each.second().rep())
        .toList();
  }

  private static Happening first(UnaryOperator<RepTelling> said) {
    return rep("a", said).at(1);
  }

  private static Happening second(UnaryOperator<RepTelling> said) {
    return rep("b", said).at(2);
  }

  @Test
  void twoRepsOfOneDogCloseTogetherAreSuspected() {
    assertThat(pairs(rep("b").at(2), rep("a").at(1))).containsExactly("a b");
  }

  @Test
  void theTimeBetweenThemIsInclusive() {
    Happening[] told = {rep("a").at(1), rep("b").at(2)};

    assertThat(among(Duration.ofSeconds(60), told))
        .singleElement()
        .satisfies(each -> assertThat(each.apart()).isEqualTo(Duration.ofSeconds(60)));
    assertThat(among(Duration.ofSeconds(59), told)).isEmpty();
  }

  @Test
  void whatBothSayMustBeAlike() {
    assertThat(pairs(first(rep -> rep), second(rep -> rep.by("bramble")))).isEmpty();
    assertThat(pairs(first(rep -> rep), second(rep -> rep.in("s-2")))).isEmpty();
    assertThat(pairs(first(rep -> rep), second(rep -> rep.on("second")))).isEmpty();
    assertThat(pairs(first(rep -> rep), second(rep -> rep.with(RECALL)))).isEmpty();
    assertThat(pairs(first(rep -> rep.dogSide(LEFT)), second(rep -> rep.dogSide(RIGHT)))).isEmpty();
    assertThat(pairs(first(rep -> rep.from(30)), second(rep -> rep.from(45)))).isEmpty();
  }

  @Test
  void whatOneLeavesUnsaidKeepsNothingApart() {
    assertThat(pairs(first(rep -> rep.on("main")), second(rep -> rep))).containsExactly("a b");
    assertThat(pairs(first(rep -> rep.dogSide(LEFT)), second(rep -> rep))).containsExactly("a b");
    assertThat(pairs(first(rep -> rep), second(rep -> rep.from(45)))).containsExactly("a b");
    assertThat(pairs(first(rep -> rep.dogSide(LEFT)), second(rep -> rep.from(45))))
        .containsExactly("a b");
    assertThat(pairs(first(rep -> rep.from("1:30")), second(rep -> rep.from(45))))
        .containsExactly("a b");
  }

  @Test
  void voidRepsAreSuspectedTooAndWhatDiffersIsSaid() {
    Happening[] told = {
      handlerRegistered("robin"),
      handlerRegistered("sam"),
      first(rep -> rep.ended(VOID).observer("robin").drive(2)),
      second(rep -> rep.ended(CLEAN).observer("sam"))
    };

    assertThat(among(Duration.ofMinutes(2), told))
        .singleElement()
        .satisfies(
            each ->
                assertThat(each.differs())
                    .containsExactly(RepAspect.OUTCOME, RepAspect.OBSERVER, RepAspect.DRIVE));
  }

  @Test
  void eachIsPairedWithTheNearestBeforeItThatFits() {
    assertThat(pairs(rep("a").at(1), rep("b").at(2), rep("c").at(3))).containsExactly("a b", "b c");
    assertThat(
            pairs(
                rep("a", rep -> rep.from(45)).at(1),
                rep("b", rep -> rep.from(30)).at(2),
                rep("c", rep -> rep.from(45)).at(3)))
        .containsExactly("a c");
  }

  @Test
  void loggingsOfOneRepAreNoSuspicion() {
    assertThat(pairs(rep("a").at(1), rep("a", rep -> rep.ended(MISSED_ENTRY)).at(2))).isEmpty();
  }

  @Test
  void withdrawingTheLaterOneEndsIt() {
    assertThat(pairs(rep("a").at(1), rep("b").at(2).as("later"), withdrawn("later"))).isEmpty();
  }
}
