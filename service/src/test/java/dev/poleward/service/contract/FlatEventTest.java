package dev.poleward.service.contract;

import static dev.poleward.service.contract.Events.CONTRACT;
import static dev.poleward.service.contract.Events.accepted;
import static dev.poleward.service.contract.Events.tree;
import static dev.poleward.service.contract.PlainContract.PLAIN;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.Envelope;
import dev.poleward.service.contract.Judgement.Accepted;
import dev.poleward.service.contract.Judgement.Refused;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Flat bodies are judged as the events that they are, and told so in their own words. */
class FlatEventTest {

  private static final long SEED = Long.getLong("poleward.seed", 20_260_504);
  private static final int CASES = Integer.getInteger("poleward.cases", 2_000);

  private static List<String> told(Judgement judgement) {
    return Events.faults(judgement).stream()
        .map(fault -> fault.pointer() + " " + fault.detail())
        .toList();
  }

  private static Judgement rep(String body) {
    return CONTRACT.judgeFlatEvent("rep.logged.v1", Map.of("session", "s-1"), tree(body));
  }

  @Test
  void attributesAndDataComeApart() {
    SentEvent event =
        accepted(
            rep(
                "{'id':'e-1','time':'2026-05-04T18:02:11+01:00','source':'/apps/field-notes','rep':'r-1',"
                    + "'dog':'juniper','manoeuvre':'alongside','outcome':'clean'}"));

    assertThat(event.type()).isEqualTo("rep.logged.v1");
    assertThat(event.envelope().id()).isEqualTo("e-1");
    assertThat(event.envelope().time()).isEqualTo("2026-05-04T18:02:11+01:00");
    assertThat(event.envelope().source()).isEqualTo("/apps/field-notes");
    assertThat(event.data())
        .isEqualTo(
            tree(
                "{'rep':'r-1','dog':'juniper','manoeuvre':'alongside','outcome':'clean','session':'s-1'}"));
    assertThat(event.recordedTime()).isNull();
  }

  @Test
  void withoutASourceItIsTheResources() {
    Envelope envelope =
        accepted(
                CONTRACT.judgeFlatEvent(
                    "session.closed.v1",
                    Map.of("session", "s-1"),
                    tree("{'id':'e-1','time':'2026-05-04T18:02:11Z'}")))
            .envelope();

    assertThat(envelope.source()).isEqualTo("/poleward/resources");
  }

  @Test
  void everyFaultIsToldAtOnceWhereItLies() {
    assertThat(
            told(
                rep(
                    "{'id':'a b','time':'2026-05-04','source':'','rep':7,'session':'s-1','dogSide':'up',"
                        + "'setup':{'poles':4,'spacing':0.6,'leadIn':'jump'},'rewards':[{'kind':'pat','at':'exit'}],"
                        + "'type':'rep.logged.v1','data':{},'recordedtime':'2026-05-04T18:02:11Z','a/b':1}")))
        .containsExactlyInAnyOrder(
            "/id must be 1 to 64 of the characters A-Z a-z 0-9 . _ ~ -, and not . or ..",
            "/time must be a time that exists, of the years 1900 to 2199, RFC 3339 with an offset, as in 2026-05-04T18:02:11+01:00",
            "/source must be 1 to 1024 characters long",
            "/rep must be text",
            "/session is said by the path",
            "/dog is required",
            "/manoeuvre is required",
            "/outcome is required",
            "/dogSide must be one of left, right",
            "/setup/angle is required with a jump, or clock in its place",
            "/rewards/0/kind must be one of food, toy",
            "/type is not known here",
            "/data is not known here",
            "/recordedtime is not known here",
            "/a~1b is not known here");
  }

  @ParameterizedTest
  @ValueSource(strings = {"[]", "1", "'text'", "null", "true", "[{'id':'e-1'}]"})
  void onlyAnObjectIsAnEvent(String body) {
    assertThat(told(rep(body))).singleElement().asString().startsWith(" must be an object");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "rep.amended.v1|rep|''|must say something besides id, time and source",
        "rep.amended.v1|rep|,'source':'/apps/x'|must say something besides id, time and source",
        "rep.amended.v1|rep|,'outcome':null|/outcome must be text",
        "event.withdrawn.v1|event|''|/reason is required",
        "setup.changed.v1|session|,'setup':{'poles':4,'spacing':0.6,'leadIn':'none','angle':30,'clock':'2:00'}|/setup/clock must agree",
        "programme.published.v1|nothing|,'programme':'p','name':'P','stages':[]|/stages must hold"
      })
  void rulesAreToldInTheWordsOfTheBody(String type, String place, String more, String fault) {
    Map<String, String> inPath = place.equals("nothing") ? Map.of() : Map.of(place, "x-1");

    assertThat(
            told(
                CONTRACT.judgeFlatEvent(
                    type,
                    inPath,
                    tree("{'id':'e-1','time':'2026-05-04T18:02:11Z'%s}".formatted(more)))))
        .singleElement()
        .satisfies(each -> assertThat(each.strip()).startsWith(fault));
  }

  /** Made and spoiled bodies: the judge says of both forms of an event the same. */
  @Test
  void bothFormsOfAnEventAreJudgedAlike() {
    List<FlatOperation> operations = FlatOperation.all();
    int accepted = 0;
    for (int i = 0; i < CASES; i++) {
      long seed = SEED + i;
      SplittableRandom random = new SplittableRandom(seed);
      FlatOperation operation = operations.get(random.nextInt(operations.size()));
      ObjectNode event = event(operation, random);
      Map<String, String> inPath = operation.inPath(event.path("data"));
      Mutation mutation = new Mutation(random);
      for (int spoilt = random.nextInt(3); spoilt > 0; spoilt--) {
        mutation.spoil((ObjectNode) event.get("data"));
      }
      ObjectNode data = (ObjectNode) event.get("data");
      data.remove(List.of("id", "time", "source"));
      inPath.forEach(data::put);

      Judgement flat =
          CONTRACT.judgeFlatEvent(operation.type(), inPath, sent(operation.body(event)));

      String told = "-Dpoleward.cases=1 -Dpoleward.seed=%d%n%s".formatted(seed, event);
      switch (CONTRACT.judgeEvent("", sent(event))) {
        case Accepted(SentEvent whole) -> {
          assertThat(accepted(flat).data()).as(told).isEqualTo(whole.data());
          assertThat(accepted(flat).type()).as(told).isEqualTo(whole.type());
          assertThat(accepted(flat).envelope()).as(told).isEqualTo(whole.envelope());
          assertThat(PLAIN.accepts(operation.component(), operation.body(event))).as(told).isTrue();
          accepted++;
        }
        case Refused(List<Fault> faults) ->
            assertThat(pointers(Events.faults(flat))).as(told).isEqualTo(withoutData(faults));
      }
    }
    if (CASES >= 100) {
      assertThat(accepted).isBetween(CASES / 20, CASES * 19 / 20);
    }
  }

  private static ObjectNode event(FlatOperation operation, SplittableRandom random) {
    BodyMaker maker = new BodyMaker(random);
    ObjectNode event = (ObjectNode) maker.make(bare("Event"));
    event.retain("specversion", "id", "source", "time");
    ObjectNode data = (ObjectNode) maker.make(bare(EventTypes.component(operation.type())));
    Mending.mend(operation.type(), data);
    return event.put("type", operation.type()).set("data", data);
  }

  private static JsonNode bare(String component) {
    return BareSchema.of(PLAIN.component(component), PLAIN.openapi());
  }

  /** As it arrives: whole numbers, for instance, are read as such. */
  private static JsonNode sent(JsonNode body) {
    return switch (CONTRACT.parse(Events.bytes(body.toString()))) {
      case ParsedBody.Parsed(JsonNode tree) -> tree;
      case ParsedBody.Unreadable(List<Fault> faults) ->
          throw new AssertionError(faults + " " + body);
    };
  }

  private static List<String> pointers(List<Fault> faults) {
    return faults.stream().map(Fault::pointer).sorted().toList();
  }

  private static List<String> withoutData(List<Fault> faults) {
    return faults.stream()
        .map(fault -> fault.pointer().replaceFirst("^/data", ""))
        .sorted()
        .toList();
  }
}
