package dev.poleward.service.http;

import static dev.poleward.service.http.Said.at;
import static dev.poleward.service.http.Said.event;
import static dev.poleward.service.http.Said.json;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import dev.poleward.service.Club;
import dev.poleward.service.RunningService;
import dev.poleward.service.SharedService;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A refusal names every fault at once, each at the member that has it. */
@ExtendWith(SharedService.class)
class FaultsTest {

  private final Club club;

  FaultsTest(Club club) {
    this.club = club;
  }

  private static List<String> pointers(Response answer) {
    answer
        .then()
        .statusCode(400)
        .body("type", equalTo("urn:poleward:problem:invalid"))
        .body("status", equalTo(400));
    return answer.path("errors.pointer");
  }

  @Test
  void allFaultsAreNamedAtOnce() {
    String body =
        json(
            """
            {'specversion':'0.3','id':'','type':'rep.logged.v1','time':'yesterday','source':'/a','UPPER':1,
             'list':[1],'data_base64':'e30=','recordedtime':'soon','data':{
               'rep':'r 1','session':1,'manoeuvre':'sideways','dogSide':'middle','outcome':'clean','drive':4,
               'angle':180,'rewards':[{'kind':'food','at':'gap','count':1},{'kind':'praise','at':'gap','count':-1}],
               'setup':{'poles':0,'spacing':'wide','leadIn':'jump','extra':1},'a/b~c':1}}
            """);

    assertThat(pointers(club.send(body)))
        .contains(
            "/specversion",
            "/id",
            "/time",
            "/UPPER",
            "/list",
            "/data_base64",
            "/recordedtime",
            "/data/rep",
            "/data/session",
            "/data/dog",
            "/data/manoeuvre",
            "/data/dogSide",
            "/data/drive",
            "/data/angle",
            "/data/rewards/1/kind",
            "/data/rewards/1/count",
            "/data/setup/poles",
            "/data/setup/spacing",
            "/data/setup/extra",
            "/data/a~1b~0c")
        .doesNotHaveDuplicates()
        .noneMatch(pointer -> pointer.startsWith("/data/rewards/0"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "rep.logged.v1|{'rep':'r','session':'s','dog':'d','manoeuvre':'send','outcome':'clean','angle':30,'clock':'2:00'}|/data/clock",
        "setup.changed.v1|{'session':'s','setup':{'poles':4,'spacing':0.6,'leadIn':'tunnel'}}|/data/setup",
        "dog.merged.v1|{'dog':'d','into':'d'}|/data/into",
        "timing.recorded.v1|{'device':'t','sequence':1,'deviceClock':1,'entryAt':5,'exitAt':4}|/data/exitAt",
        "club.settings-changed.v1|{'timeZone':'Europe/Atlantis'}|/data/timeZone",
        "rep.amended.v1|{'rep':'r'}|/data",
        "session.opened.v1|[]|/data",
        "session.opened.v1|null|/data",
        "session.opened.v2|{}|/type",
        "SESSION.opened.v1|{}|/type"
      })
  void rulesThatNoSchemaCanSayAreHeldToo(String type, String data, String pointer) {
    assertThat(pointers(club.send(event("e-1", type, at("18:00:00"), data))))
        .anyMatch(each -> each.startsWith(pointer));
    assertThat(club.get("/events/e-1").statusCode()).isEqualTo(404);
  }

  /** Every member of every kind in every place: refused with a pointer, never with a failure. */
  @Test
  void membersOfWrongKindsAreFaultsAndNotFailures() {
    List<String> values =
        List.of("null", "true", "17", "-1.5e300", "''", "'text'", "[]", "[null]", "{}", "{'a':{}}");
    List<String> members =
        List.of("specversion", "id", "source", "type", "time", "data", "subject", "recordedtime");
    List<String> events =
        members.stream()
            .flatMap(member -> values.stream().map(value -> withMember(member, json(value))))
            .toList();

    club.sendAll(events)
        .then()
        .statusCode(200)
        .body("refused.problem.status.unique()", equalTo(List.of(400)));
  }

  private static String withMember(String member, String value) {
    String whole = event("e-1", "session.closed.v1", at("18:00:00"), "{'session':'s'}");
    int begin = whole.indexOf('"' + member + "\":");
    String name = '"' + member + "\":";
    if (begin < 0) {
      return whole.substring(0, whole.length() - 1) + "," + name + value + "}";
    }
    int end = member.equals("data") ? whole.length() - 1 : whole.indexOf(",\"", begin);
    return whole.substring(0, begin) + name + value + whole.substring(end);
  }

  @Test
  void registrationsAreJudgedInFull(RunningService service) {
    Response answer =
        service
            .as(service.hostKey())
            .contentType("application/json")
            .body(
                json(
                    "{'id':'','club':'a b','timeZone':'Moon/Base','defaults':{'1':1},'time':'now','x':1}"))
            .post("/v1/clubs");

    assertThat(pointers(answer))
        .containsExactlyInAnyOrder(
            "/id", "/club", "/name", "/timeZone", "/defaults/1", "/time", "/x");
  }

  @Test
  void wishesForKeysAreJudgedInFull() {
    Response answer =
        club.given()
            .contentType("application/json")
            .body(
                json(
                    "{'key':'a_b','scopes':['host','club:manage','club:manage'],'dogs':[],'label':7}"))
            .post(club.path("/access-keys"));

    assertThat(pointers(answer)).contains("/id", "/key", "/scopes/0", "/scopes", "/dogs", "/label");
  }

  @Test
  void aNarrowedKeyDoesNotManage() {
    Response answer =
        club.given()
            .contentType("application/json")
            .body(json("{'id':'i','scopes':['records:read','club:manage'],'dogs':['juniper']}"))
            .post(club.path("/access-keys"));

    assertThat(pointers(answer)).containsExactly("/scopes/1");
  }

  @Test
  void otherKindsOfBodiesAreNotReadThereEither() {
    club.given()
        .contentType("text/plain")
        .body("{}")
        .post(club.path("/access-keys"))
        .then()
        .statusCode(415)
        .body("detail", containsString("application/json"));
  }
}
