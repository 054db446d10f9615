package dev.poleward.service.codec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.service.codec.Upcasters.Step;
import dev.poleward.service.codec.Upcasters.Versioned;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Recorded events of older shapes are read as what they would be today, and stay as they are. */
class UpcastersTest {

  /** A rep as an imagined forerunner recorded it: one reward, the angle without its sign. */
  private static final String RECORDED =
      """
      {"rep":"r-1","session":"s-1","dog":"juniper","manoeuvre":"alongside","outcome":"clean",
       "side":"left","entry":{"side":"gap","degrees":45},"reward":"toy"}
      """;

  private static final Step FIRST =
      new Step("rep.logged.v0", "rep.logged.v1", UpcastersTest::lifted);

  private static ObjectNode lifted(ObjectNode data) {
    data.set("dogSide", data.remove("side"));
    ObjectNode entry = (ObjectNode) data.remove("entry");
    int sign = entry.get("side").asText().equals("gap") ? -1 : 1;
    data.put("angle", sign * entry.get("degrees").asDouble());
    data.putArray("rewards")
        .addObject()
        .put("kind", data.remove("reward").asText())
        .put("at", "exit");
    return data;
  }

  @Test
  void anOldShapeIsReadAsItWouldBeToday() {
    EventCodec codec = new EventCodec(new Upcasters(List.of(FIRST)));
    ObjectNode recorded = read(RECORDED);

    TrainingEvent event = codec.decode("rep.logged.v0", recorded);

    assertThat(event)
        .isInstanceOfSatisfying(
            RepLogged.class,
            rep -> {
              assertThat(rep.rep()).isEqualTo("r-1");
              assertThat(rep.details().dogSide()).isEqualTo(DogSide.LEFT);
              assertThat(rep.details().approach())
                  .isEqualTo(new Approach(new EntryAngle(-45), null));
              assertThat(rep.details().rewards())
                  .containsExactly(new Reward(RewardKind.TOY, RewardPlace.EXIT, null, null));
            });
    assertThat(recorded).as("what is recorded is not touched").isEqualTo(read(RECORDED));
  }

  @Test
  void todaysShapeIsReadAsItIs() {
    EventCodec old = new EventCodec(new Upcasters(List.of(FIRST)));
    EventCodec plain = new EventCodec(Upcasters.NONE);
    ObjectNode data =
        new Upcasters(List.of(FIRST)).newest(new Versioned("rep.logged.v0", read(RECORDED))).data();

    assertThat(old.decode("rep.logged.v1", data)).isEqualTo(plain.decode("rep.logged.v1", data));
  }

  @Test
  void stepsAreTakenOneAfterTheOther() {
    Step before = new Step("rep.logged.before", "rep.logged.v0", data -> data.put("reward", "toy"));
    ObjectNode older = read(RECORDED);
    older.remove("reward");

    Versioned newest =
        new Upcasters(List.of(FIRST, before)).newest(new Versioned("rep.logged.before", older));

    assertThat(newest.type()).isEqualTo("rep.logged.v1");
    assertThat(newest.data()).isEqualTo(lifted(read(RECORDED)));
  }

  @Test
  void typesThatNobodyKnowsAreNoEvents() {
    assertThat(new EventCodec(Upcasters.NONE).decode("rep.logged.v0", read(RECORDED))).isNull();
  }

  @Test
  void aCircleIsRefused() {
    Step there = new Step("a.v1", "a.v2", UnaryOperator.identity());
    Step back = new Step("a.v2", "a.v1", UnaryOperator.identity());
    Step self = new Step("a.v1", "a.v1", UnaryOperator.identity());

    assertThatThrownBy(() -> new Upcasters(List.of(there, back)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("circle");
    assertThatThrownBy(() -> new Upcasters(List.of(self)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("circle");
  }

  @Test
  void twoStepsFromOneTypeAreRefused() {
    Step one = new Step("a.v1", "a.v2", UnaryOperator.identity());
    Step other = new Step("a.v1", "a.v3", UnaryOperator.identity());

    assertThatThrownBy(() -> new Upcasters(List.of(one, other)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("a.v1");
  }

  private static ObjectNode read(String json) {
    try {
      return (ObjectNode) JsonMapper.builder().build().readTree(json);
    } catch (IOException e) {
      throw new UncheckedIOException(json, e);
    }
  }
}
