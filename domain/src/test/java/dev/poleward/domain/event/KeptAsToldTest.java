package dev.poleward.domain.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import dev.poleward.domain.event.DogEvent.DogAmended;
import dev.poleward.domain.event.RepEvent.RepAmended;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.history.Tell;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** An event never changes, and is written alike by every process. */
class KeptAsToldTest {

  private static final OffsetDateTime TIME = OffsetDateTime.parse("2026-05-04T18:02:11+01:00");

  @Test
  void extensionsAreKeptAscendingByName() {
    Map<String, Object> told = new HashMap<>();
    for (String name : List.of("traceparent", "app", "recordedtime", "zone", "build", "battery")) {
      told.put(name, "x");
    }
    Envelope envelope = new Envelope("e-1", "/apps/field-notes", TIME, null, null, told);
    told.clear();

    assertThat(envelope.extensions().keySet())
        .containsExactly("app", "battery", "build", "recordedtime", "traceparent", "zone");
    assertThatExceptionOfType(UnsupportedOperationException.class)
        .isThrownBy(() -> envelope.extensions().clear());
  }

  @Test
  void theTimeIsKeptWithItsOffset() {
    Envelope envelope = new Envelope("e-1", "/apps/field-notes", TIME, null, null, Map.of());

    assertThat(envelope.time()).hasToString("2026-05-04T18:02:11+01:00");
    assertThat(envelope.extensions()).isEmpty();
  }

  @Test
  void whatAnAmendmentTakesAwayIsKeptInTheOrderOfTheFields() {
    Set<RepField> fields = new HashSet<>(EnumSet.allOf(RepField.class));
    Set<DogTrait> traits = new HashSet<>(EnumSet.allOf(DogTrait.class));
    RepAmended rep = new RepAmended("r-1", null, null, null, null, RepDetails.NONE, fields);
    DogAmended dog = new DogAmended("juniper", null, Tell.NO_TRAITS, traits);
    fields.clear();
    traits.clear();

    assertThat(rep.cleared()).containsExactly(RepField.values());
    assertThat(dog.cleared()).containsExactly(DogTrait.values());
    assertThatExceptionOfType(UnsupportedOperationException.class)
        .isThrownBy(() -> rep.cleared().clear());
    assertThatExceptionOfType(UnsupportedOperationException.class)
        .isThrownBy(() -> dog.cleared().clear());
  }

  @Test
  void listsAreKeptAsTheyWereTold() {
    List<String> names = new ArrayList<>(List.of("robin", "sam"));
    List<Double> gaps = new ArrayList<>(List.of(210.0));
    List<Reward> rewards =
        new ArrayList<>(List.of(new Reward(RewardKind.TOY, RewardPlace.EXIT, null, null)));
    DogTraits traits = new DogTraits(null, null, null, names, null);
    Setup setup = new Setup(4, 0.6, LeadIn.NONE, null, null, null, null, names);
    TimingRecorded timing = new TimingRecorded("gate", 1, 2, 3, 4, gaps, null, null, null, null);
    RepDetails details =
        new RepDetails(
            null, null, null, null, null, null, null, null, null, null, rewards, null, null, null,
            null, null);
    names.clear();
    gaps.clear();
    rewards.clear();

    assertThat(traits.handlers()).containsExactly("robin", "sam");
    assertThat(setup.aids()).containsExactly("robin", "sam");
    assertThat(timing.gaps()).containsExactly(210.0);
    assertThat(details.rewards()).hasSize(1);
  }
}
