package dev.poleward.service.contract;

import static dev.poleward.service.contract.Events.CONTRACT;
import static dev.poleward.service.contract.Events.event;
import static dev.poleward.service.contract.Events.faults;
import static dev.poleward.service.contract.Events.tree;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a schema says, told in plain words and with the pointer at the very member. */
class FormTest {

  private static final String REP =
      "{'rep':'r-1','session':'s-1','dog':'juniper','manoeuvre':'alongside','outcome':'clean'%s}";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "'extra':1                                    | /data/extra           | is not known here",
        "'a/b~c':1                                    | /data/a~1b~0c         | is not known here",
        "'#':1                                        | /data/#               | is not known here",
        "'dogSide':'middle'                           | /data/dogSide         | must be one of left, right",
        "'dogSide':null                               | /data/dogSide         | must be text: one of left, right",
        "'dogSide':5                                  | /data/dogSide         | must be text: one of left, right",
        "'drive':2.5                                  | /data/drive           | must be a whole number",
        "'drive':4                                    | /data/drive           | must lie between 1 and 3",
        "'angle':180                                  | /data/angle           | must lie between -180 and 180, both excluded: straight back through the poles has no side",
        "'angle':'45'                                 | /data/angle           | must be a number",
        "'clock':'6:00'                               | /data/clock           | must be a clock position on a whole or half hour, as in 1:30; 6:00 has no side",
        "'handler':'a b'                              | /data/handler         | must be 1 to 64 of the characters A-Z a-z 0-9 . _ ~ -, and not . or ..",
        "'handlerAt':''                               | /data/handlerAt       | must be 1 to 64 characters long",
        "'lateralDistance':-0.1                       | /data/lateralDistance | must lie between 0 and 50",
        "'rewards':{}                                 | /data/rewards         | must be a list",
        "'rewards':[{'kind':'food'}]                  | /data/rewards/0/at    | is required",
        "'rewards':[{'kind':'food','at':'gap','x':0}] | /data/rewards/0/x     | is not known here",
        "'setup':{'poles':4,'spacing':0.6}            | /data/setup/leadIn    | is required",
        "'setup':[]                                   | /data/setup           | must be an object",
      })
  void ofARep(String member, String pointer, String detail) {
    assertThat(faults(event("rep.logged.v1", REP.formatted("," + member))))
        .containsExactly(new Fault(pointer, detail));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "dog.amended.v1 | {'dog':'a'} | /data | must say more than dog: at least one of callName, born, withersHeight, heatRisk, handlers, guest",
        "dog.amended.v1 | {'dog':'a','born':'2026-02-30'} | /data/born | must be a day that exists, of the years 1900 to 2199, as in 2026-05-04",
        "dog.amended.v1 | {'dog':'a','guest':0} | /data/guest | must be true or false or null",
        "dog.amended.v1 | {'dog':'a','handlers':['b','b']} | /data/handlers | must not say the same twice",
        "rep.amended.v1 | {'rep':'a'} | /data | must say more than rep",
        "device.assigned.v1 | {'device':'a'} | /data | must say more than device: at least one of dog, poleSet, ground",
        "club.settings-changed.v1 | {} | /data | must say something: at least one of name, timeZone, careLimits, defaults",
        "club.settings-changed.v1 | {'defaults':{'1':2}} | /data/defaults/1 | is not a name for a setting: a letter, then at most 63 letters and digits",
        "club.settings-changed.v1 | {'defaults':{'a':[]}} | /data/defaults/a | must be a number, true or false or text",
        "club.settings-changed.v1 | {'careLimits':{'heatCaution':30,'heatStop':28}} | /data/careLimits/heatCaution | must not be above heatStop",
        "dog.cleared.v1 | {'dog':'a','limits':{'heatCaution':30,'heatStop':28}} | /data/limits/heatCaution | must not be above heatStop",
        "handler.registered.v1 | {'handler':'a'} | /data/name | is required",
        "ground.registered.v1 | {'ground':'a','length':0} | /data/length | must be above 0 and at most 1000",
        "session.closed.v1 | null | /data | must be an object",
        "session.closed.v1 | 'a' | /data | must be an object",
      })
  void ofOtherData(String type, String data, String pointer, String detail) {
    assertThat(faults(event(type, data))).containsExactly(new Fault(pointer, detail));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "'Foo':'x'           | /Foo          | is not known here: attributes have names of 1 to 20 lower-case letters and digits",
        "'data_base64':'x'   | /data_base64  | is not read here: data is JSON, in data",
        "'ext':1.5           | /ext          | must be text, a whole number, true or false or null",
        "'ext':2147483648    | /ext          | must lie between -2147483648 and 2147483647",
        "'dataschema':'a b'  | /dataschema   | must be a URI",
        "'recordedtime':'x'  | /recordedtime | must be a time that exists, of the years 1900 to 2199, RFC 3339 with an offset, as in 2026-05-04T18:02:11+01:00",
        "'forgotten':'true'  | /forgotten    | must be true or false or null",
        "'datacontenttype':'text/plain' | /datacontenttype | must be application/json or null",
      })
  void ofTheEnvelope(String attribute, String pointer, String detail) {
    String others = "'id':'e','source':'/tests','time':'2026-05-04T18:02:11+01:00',";

    assertThat(faults(event("session.closed.v1", "{'session':'s'}", others + attribute)))
        .containsExactly(new Fault(pointer, detail));
  }

  @Test
  void everythingIsToldAtOnceAndBelowThePrefix() {
    String json =
        "{'specversion':'0.3','type':'rep.logged.v1','time':'yesterday','id':'','extra_':1,'data':"
            + REP.formatted(",'drive':9,'setup':{'poles':1,'leadIn':'jump'},'x':1")
            + "}";

    assertThat(faults(CONTRACT.judgeEvent("/7", tree(json))))
        .extracting(Fault::pointer)
        .containsExactlyInAnyOrder(
            "/7/specversion",
            "/7/source",
            "/7/time",
            "/7/id",
            "/7/extra_",
            "/7/data/drive",
            "/7/data/setup/poles",
            "/7/data/setup/spacing",
            "/7/data/setup/angle",
            "/7/data/x");
  }

  @Test
  void everyFaultOfCareLimitsIsToldAtOnce() {
    String limits =
        "{'careLimits':{'poles':1,'gapsPerWeek':10001,'barHeightYoung':1.5,'heatCaution':40,'heatStop':30,'gaps':9}}";

    assertThat(faults(event("club.settings-changed.v1", limits)))
        .extracting(Fault::pointer)
        .containsExactlyInAnyOrder(
            "/data/careLimits/poles",
            "/data/careLimits/gapsPerWeek",
            "/data/careLimits/barHeightYoung",
            "/data/careLimits/heatCaution",
            "/data/careLimits/gaps");
  }

  @Test
  void anEmptyObjectLacksWhatAnEventNeeds() {
    assertThat(faults(CONTRACT.judgeEvent("/0", tree("{}"))))
        .containsExactlyInAnyOrderElementsOf(
            List.of("specversion", "id", "source", "type", "time", "data").stream()
                .map(name -> new Fault("/0/" + name, "is required"))
                .toList());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "plan.issued.v1        | is written by the service alone, through its plans",
        "club.registered.v1    | is written by the service alone, through POST /v1/clubs",
        "access-key.issued.v1  | is written by the service alone, through POST /v1/clubs/{club}/access-keys",
        "access-key.revoked.v1 | is written by the service alone, through DELETE /v1/clubs/{club}/access-keys/{key}",
        "person.forgotten.v1   | is written by the service alone, through DELETE /v1/clubs/{club}/handlers/{handler}/personal-data",
        "rep.logged.v2         | is not a type that is known here",
      })
  void typesThatClientsCannotSend(String type, String detail) {
    assertThat(faults(event(type, "{}"))).containsExactly(new Fault("/type", detail));
  }

  @Test
  void whatIsNoObjectIsNoEvent() {
    assertThat(faults(CONTRACT.judgeEvent("/3", tree("[1]"))))
        .containsExactly(new Fault("/3", "must be an object, a CloudEvent in its JSON form"));
  }

  @Test
  void faultsEndAtAHundred() {
    String names =
        IntStream.range(0, 900).mapToObj("'x%d':1"::formatted).collect(Collectors.joining(","));

    assertThat(faults(event("rep.logged.v1", REP.formatted("," + names)))).hasSize(100);
  }

  @Test
  void whatIsFarTooLargeIsNotLookedAtCloser() {
    String ids = IntStream.range(0, 200_000).mapToObj(_ -> "'a'").collect(Collectors.joining(","));

    assertThat(
            faults(
                event("dog.registered.v1", "{'dog':'a','callName':'b','handlers':[" + ids + "]}")))
        .containsExactly(new Fault("/data/handlers", "has more than 1000 members"));
  }

  @Test
  void textOfMegabytesIsRefusedLikeAnyOther() {
    String zone = "'timeZone':'a" + "/a".repeat(1 << 20) + "'";
    String email = "'email':'" + "a".repeat(1 << 20) + "'";

    assertThat(faults(event("club.settings-changed.v1", "{" + zone + "}")))
        .extracting(Fault::pointer)
        .containsExactly("/data/timeZone");
    assertThat(faults(event("handler.registered.v1", "{'handler':'a','name':'b'," + email + "}")))
        .containsExactly(new Fault("/data/email", "must be at most 254 characters long"));
  }

  @Test
  void pointersEndWhereTheyWouldBeTooLong() {
    String deep = "{'" + "~".repeat(500) + "':";
    String json = deep.repeat(50) + "{'#':1}" + "}".repeat(50);

    assertThat(faults(event("rep.logged.v1", REP.formatted(",'x':" + json))))
        .allSatisfy(fault -> assertThat(fault.pointer()).hasSizeLessThanOrEqualTo(2_048))
        .anySatisfy(fault -> assertThat(fault.pointer()).startsWith("/data/x/~0~0"));
  }
}
