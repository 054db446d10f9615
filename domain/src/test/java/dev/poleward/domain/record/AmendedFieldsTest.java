package dev.poleward.domain.record;

import static dev.poleward.domain.history.Tell.amended;
import static dev.poleward.domain.history.Tell.handlerRegistered;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Tell.tunnelAt;
import static dev.poleward.domain.history.Told.givenTraining;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.CrossAt;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.JumpTurn;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.event.RepField;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import dev.poleward.domain.event.Stride;
import dev.poleward.domain.history.RepTelling;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Every optional field of a rep, one by one: each is amended and taken away, and no other. */
class AmendedFieldsTest {

  private record Field(
      UnaryOperator<RepTelling> before,
      UnaryOperator<RepTelling> after,
      Function<RepDetails, @Nullable Object> read) {}

  private static final Map<RepField, Field> FIELDS = new EnumMap<>(RepField.class);

  private static void field(
      RepField name,
      UnaryOperator<RepTelling> before,
      UnaryOperator<RepTelling> after,
      Function<RepDetails, @Nullable Object> read) {
    FIELDS.put(name, new Field(before, after, read));
  }

  static {
    field(
        RepField.DOG_SIDE,
        rep -> rep.dogSide(DogSide.LEFT),
        rep -> rep.dogSide(DogSide.RIGHT),
        RepDetails::dogSide);
    field(
        RepField.BACK_CHAIN_STEP,
        rep -> rep.backChainStep(BackChainStep.WRAP),
        rep -> rep.backChainStep(BackChainStep.STRAIGHT),
        RepDetails::backChainStep);
    field(
        RepField.JUMP_TURN,
        rep -> rep.jumpTurn(JumpTurn.LEFT),
        rep -> rep.jumpTurn(JumpTurn.RIGHT),
        RepDetails::jumpTurn);
    field(
        RepField.LATERAL_DISTANCE,
        rep -> rep.lateralDistance(3),
        rep -> rep.lateralDistance(5),
        RepDetails::lateralDistance);
    field(
        RepField.HANDLER_AT,
        rep -> rep.handlerAt("start"),
        rep -> rep.handlerAt("far end"),
        RepDetails::handlerAt);
    field(
        RepField.CROSS_AT,
        rep -> rep.crossAt(CrossAt.ENTRY),
        rep -> rep.crossAt(CrossAt.EXIT),
        RepDetails::crossAt);
    field(RepField.ANGLE, rep -> rep.from(45), rep -> rep.from(60), RepDetails::approach);
    field(
        RepField.SETUP,
        rep -> rep.over(tunnelAt(45)),
        rep -> rep.over(tunnelAt(60)),
        RepDetails::setup);
    field(RepField.POLE_SET, rep -> rep.on("main"), rep -> rep.on("second"), RepDetails::poleSet);
    field(RepField.AT_POLE, rep -> rep.atPole(1), rep -> rep.atPole(4), RepDetails::atPole);
    field(
        RepField.REWARDS,
        rep -> rep.rewards(new Reward(RewardKind.FOOD, RewardPlace.GAP, 3, null)),
        rep -> rep.rewards(new Reward(RewardKind.TOY, RewardPlace.EXIT, 1, null)),
        RepDetails::rewards);
    field(RepField.HELP, rep -> rep.help(Help.LURE), rep -> rep.help(Help.NONE), RepDetails::help);
    field(
        RepField.HANDLER,
        rep -> rep.handler("robin"),
        rep -> rep.handler("sam"),
        RepDetails::handler);
    field(
        RepField.OBSERVER,
        rep -> rep.observer("robin"),
        rep -> rep.observer("sam"),
        RepDetails::observer);
    field(RepField.DRIVE, rep -> rep.drive(1), rep -> rep.drive(3), RepDetails::drive);
    field(
        RepField.STRIDE,
        rep -> rep.stride(Stride.HOP),
        rep -> rep.stride(Stride.SINGLE),
        RepDetails::stride);
  }

  private static RepTelling everything(RepTelling rep) {
    RepTelling told = rep;
    for (Field field : FIELDS.values()) {
      told = field.before().apply(told);
    }
    return told;
  }

  /** The clock position is the angle said otherwise, and the note is sealed beside the event. */
  @Test
  void noFieldIsForgottenHere() {
    Set<RepField> all = new HashSet<>(List.of(RepField.values()));
    all.removeAll(List.of(RepField.CLOCK, RepField.NOTE));

    assertThat(FIELDS).containsOnlyKeys(all);
    assertThat(valuesOf(details(AmendedFieldsTest::everything, rep -> rep))).doesNotContainNull();
  }

  @Test
  void eachIsAmendedByItself() {
    FIELDS.forEach(
        (name, field) -> {
          List<@Nullable Object> before =
              valuesOf(details(AmendedFieldsTest::everything, rep -> rep));
          List<@Nullable Object> after =
              valuesOf(details(AmendedFieldsTest::everything, field.after()));

          assertThat(differing(before, after)).as("%s", name).containsExactly(name);
          assertThat(details(AmendedFieldsTest::everything, field.after()))
              .extracting(field.read())
              .as("%s", name)
              .isEqualTo(field.read().apply(details(field.after(), rep -> rep)));
        });
  }

  @Test
  void eachIsTakenAwayByItself() {
    FIELDS.forEach(
        (name, field) -> {
          List<@Nullable Object> before =
              valuesOf(details(AmendedFieldsTest::everything, rep -> rep));
          List<@Nullable Object> after =
              valuesOf(details(AmendedFieldsTest::everything, rep -> rep.without(name)));

          assertThat(differing(before, after)).as("%s", name).containsExactly(name);
          assertThat(
                  field
                      .read()
                      .apply(details(AmendedFieldsTest::everything, rep -> rep.without(name))))
              .isNull();
        });
  }

  @Test
  void eachIsSaidForTheFirstTimeByAnAmendment() {
    FIELDS.forEach(
        (name, field) ->
            assertThat(details(rep -> rep, field.after()))
                .as("%s", name)
                .isEqualTo(details(field.after(), rep -> rep)));
  }

  private static RepDetails details(
      UnaryOperator<RepTelling> logged, UnaryOperator<RepTelling> amended) {
    return givenTraining(
            handlerRegistered("robin"),
            handlerRegistered("sam"),
            rep("r-1", logged),
            amended("r-1", amended))
        .whenAsked()
        .rep("r-1")
        .details();
  }

  private static List<@Nullable Object> valuesOf(RepDetails details) {
    List<@Nullable Object> values = new ArrayList<>();
    FIELDS.values().forEach(field -> values.add(field.read().apply(details)));
    return values;
  }

  private static List<RepField> differing(
      List<@Nullable Object> before, List<@Nullable Object> after) {
    List<RepField> names = List.copyOf(FIELDS.keySet());
    List<RepField> differing = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      if (!Objects.equals(before.get(i), after.get(i))) {
        differing.add(names.get(i));
      }
    }
    return differing;
  }
}
