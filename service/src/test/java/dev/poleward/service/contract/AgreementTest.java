package dev.poleward.service.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.service.codec.CanonicalJson;
import dev.poleward.service.codec.EventCodec;
import dev.poleward.service.codec.Upcasters;
import dev.poleward.service.contract.Judgement.Accepted;
import dev.poleward.service.contract.Judgement.Refused;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The schemas that clients read, the judge and the codec agree on thousands of made and spoiled
 * bodies. {@code -Dpoleward.seed} and {@code -Dpoleward.cases} look elsewhere, and longer; a
 * failure names the seed of its one case.
 */
class AgreementTest {

  private static final long SEED = Long.getLong("poleward.seed", 20_260_504);
  private static final int CASES = Integer.getInteger("poleward.cases", 2_000);

  /** What the judge may say of a body that its schema accepts: the rules that no schema can say. */
  private static final Pattern RULE =
      Pattern.compile(
          "is required with a (jump|tunnel), or clock in its place"
              + "|must agree with angle: .*"
              + "|must be one of the [0-9]+ poles that stood"
              + "|must not be before entryAt"
              + "|must be another dog: .*"
              + "|is not a time zone known here; .*"
              + "|is the id of an earlier stage already"
              + "|must be a stage of this programme"
              + "|does not belong to the method .*"
              + "|must not be above n"
              + "|must not be above heatStop"
              + "|must be below mastered"
              + "|must not be given beside stepDegrees"
              + "|is required, or stepChord in its place"
              + "|must not be below start"
              + "|is so short that a side has more than 360 rungs"
              + "|is more than the last pole can move: .*"
              + "|must be below cleanTarget"
              + "|come to [0-9]+ drills; at most 5000"
              + "|go in a circle: .*"
              + "|come after a circle of stages, .*"
              + "|must not be a probe: .*"
              + "|go with a jump as the lead-in only"
              + "|does not go with a recall"
              + "|is listed before, with the same dog side or with any"
              + "|goes with a jump or a tunnel as the lead-in only"
              + "|is the id of the programme that ships; publish under another"
              + "|is below every entry of the stage"
              + "|leave the largest entries of the stage without any");

  private static final int MANY = 100;

  /** The schema for any event at all is slow to ask; each so many cases it is asked as well. */
  private static final int WHOLE_EVERY = 50;

  private final Contract contract = Events.CONTRACT;
  private final PlainContract plain = PlainContract.PLAIN;
  private final EventCodec codec = new EventCodec(Upcasters.NONE);
  private final JsonNode envelope = bare("Event");
  private final List<String> types = types();

  @Test
  void bodiesThatKeepToSchemaAndRulesAreAcceptedAndNothingSaidIsLost() {
    for (int i = 0; i < CASES; i++) {
      long seed = SEED + i;
      SplittableRandom random = new SplittableRandom(seed);
      ObjectNode event = make(random);
      Mending.mend(event.get("type").asText(), (ObjectNode) event.get("data"));

      assertThat(agreed(event, seed))
          .as("%s%n%s", seedOf(seed), event)
          .isInstanceOf(Accepted.class);
    }
  }

  @Test
  void schemaAndJudgeAgreeOnWhateverIsMade() {
    for (int i = 0; i < CASES; i++) {
      long seed = SEED + i;
      agreed(make(new SplittableRandom(seed)), seed);
    }
  }

  @Test
  void schemaAndJudgeAgreeOnWhatIsSpoiled() {
    int accepted = 0;
    for (int i = 0; i < 2 * CASES; i++) {
      long seed = SEED + i;
      SplittableRandom random = new SplittableRandom(seed);
      ObjectNode event = make(random);
      Mending.mend(event.get("type").asText(), (ObjectNode) event.get("data"));
      Mutation mutation = new Mutation(random);
      for (int spoilt = random.nextInt(3); spoilt >= 0; spoilt--) {
        mutation.spoil(event);
      }

      accepted += agreed(event, seed) instanceof Accepted ? 1 : 0;
    }

    // Spoiling spoils most, and not all: else it would try nothing. A few cases tell nothing of it.
    if (CASES >= MANY) {
      assertThat(accepted).isBetween(CASES / 20, CASES * 3 / 2);
    }
  }

  /** Judges what arrives when this event is sent, and compares with the schema and the codec. */
  private Judgement agreed(ObjectNode event, long seed) {
    JsonNode tree = sent(event, seed);
    Judgement judgement = contract.judgeEvent("", tree);
    boolean valid = isValid(tree);
    if (seed % WHOLE_EVERY == 0 && !tree.path("forgotten").booleanValue()) {
      assertThat(plain.accepts("SentEvent", tree)).as(seedOf(seed)).isEqualTo(valid);
    }
    switch (judgement) {
      case Accepted(SentEvent sent) -> {
        assertThat(valid || namesHash(tree)).as("%s%n%s", seedOf(seed), tree).isTrue();
        assertNothingLost(sent, seed);
      }
      case Refused(List<Fault> faults) -> {
        assertWellMade(faults, tree, seed);
        if (valid && !namesHash(tree)) {
          assertThat(faults)
              .as("%s%n%s", seedOf(seed), tree)
              .allMatch(fault -> RULE.matcher(fault.detail()).matches());
        }
      }
    }
    return judgement;
  }

  private JsonNode sent(ObjectNode event, long seed) {
    return switch (contract.parse(event.toString().getBytes(StandardCharsets.UTF_8))) {
      case ParsedBody.Parsed(JsonNode tree) -> tree;
      case ParsedBody.Unreadable unreadable -> fail(seedOf(seed) + unreadable + event);
    };
  }

  private boolean isValid(JsonNode tree) {
    String type = tree.path("type").asText();
    if (!types.contains(type)) {
      return false;
    }
    String component = EventTypes.component(type);
    if (plain.accepts(component + "Event", tree)) {
      return true;
    }
    return tree.path("forgotten").booleanValue()
        && plain.component(component + "Forgotten").isObject()
        && plain.accepts("Event", tree)
        && plain.accepts(component + "Forgotten", tree.path("data"));
  }

  /** The validator passes over names that begin so; the judge does not. */
  private static boolean namesHash(JsonNode tree) {
    return tree.toString().contains("\"#");
  }

  private void assertNothingLost(SentEvent sent, long seed) {
    ObjectNode said = sent.data().deepCopy();
    plain.component(EventTypes.component(sent.type())).path("properties").properties().stream()
        .filter(each -> each.getValue().path("x-poleward-personal").booleanValue())
        .filter(each -> said.path(each.getKey()).isTextual())
        .forEach(each -> said.remove(each.getKey()));

    assertThat(CanonicalJson.of(throughCodec(sent, seed)))
        .as(seedOf(seed))
        .isEqualTo(CanonicalJson.of(said));
  }

  private ObjectNode throughCodec(SentEvent sent, long seed) {
    try {
      TrainingEvent decoded = codec.decode(sent.type(), sent.data());
      return codec.encode(Objects.requireNonNull(decoded, sent.type()));
    } catch (RuntimeException e) {
      throw new AssertionError("%s%n%s".formatted(seedOf(seed), sent.data()), e);
    }
  }

  private static void assertWellMade(List<Fault> faults, JsonNode tree, long seed) {
    assertThat(faults).as(seedOf(seed)).isNotEmpty().hasSizeLessThanOrEqualTo(100);
    assertThat(faults).extracting(Fault::pointer).as(seedOf(seed)).doesNotHaveDuplicates();
    assertThat(faults)
        .as("%s%n%s", seedOf(seed), tree)
        .allSatisfy(
            fault -> {
              assertThat(fault.detail()).isNotBlank().doesNotContain("must look like");
              JsonPointer pointer = JsonPointer.compile(fault.pointer());
              JsonNode parent = pointer.matches() ? tree : tree.at(pointer.head());
              assertThat(parent.isMissingNode()).as(fault.toString()).isFalse();
            });
  }

  private ObjectNode make(SplittableRandom random) {
    BodyMaker maker = new BodyMaker(random);
    String type = types.get(random.nextInt(types.size()));
    ObjectNode event = (ObjectNode) maker.make(envelope);
    event.put("type", type);
    event.set("data", maker.make(bare(EventTypes.component(type))));
    return event;
  }

  private JsonNode bare(String component) {
    return BareSchema.of(plain.component(component), plain.openapi());
  }

  private List<String> types() {
    List<String> types = new ArrayList<>();
    plain.component("EventType").path("enum").forEach(each -> types.add(each.asText()));
    return types;
  }

  private static String seedOf(long seed) {
    return "-Dpoleward.cases=1 -Dpoleward.seed=" + seed;
  }
}
