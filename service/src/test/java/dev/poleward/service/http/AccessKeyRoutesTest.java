package dev.poleward.service.http;

import static dev.poleward.service.http.Said.json;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;

import dev.poleward.service.Club;
import dev.poleward.service.RunningService;
import dev.poleward.service.SharedService;
import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Clubs register and keys come and go. */
@ExtendWith(SharedService.class)
class AccessKeyRoutesTest {

  private final RunningService service;
  private final Club club;

  AccessKeyRoutesTest(RunningService service, Club club) {
    this.service = service;
    this.club = club;
  }

  private Response wish(String body) {
    return club.given()
        .contentType("application/json")
        .body(json(body))
        .post(club.path("/access-keys"));
  }

  private static final String PHONE =
      "{'id':'i-1','key':'phone-1','scopes':['records:write','records:read'],'label':'Phone','time':'2026-02-01T08:00:00Z'}";

  @Test
  void aKeyIsShownOnce() {
    wish(PHONE)
        .then()
        .statusCode(201)
        .body("key", equalTo("phone-1"))
        .body("accessKey", matchesPattern("pw_" + club.id() + "_phone-1_[A-Za-z0-9]{32,128}"))
        .body("scopes", contains("records:write", "records:read"));
    wish(PHONE)
        .then()
        .statusCode(200)
        .body("key", equalTo("phone-1"))
        .body("$", not(hasKey("accessKey")));
  }

  @Test
  void otherContentIsContradicted() {
    wish(PHONE);

    for (String other :
        List.of(
            PHONE.replace("'records:read'", "'timing:push'"),
            PHONE.replace("phone-1", "phone-2"),
            PHONE.replace("Phone", "Watch"),
            PHONE.replace("'label'", "'dogs':['juniper'],'label'"),
            PHONE.replace("i-1", "i-2"))) {
      wish(other).then().statusCode(409).body("type", equalTo("urn:poleward:problem:contradicted"));
    }
    club.send(Said.dog("juniper"));
    wish(PHONE.replace("i-1", "dog-juniper").replace("phone-1", "phone-3")).then().statusCode(409);
    club.get("/access-keys").then().body("accessKeys.findAll{it.key=='phone-1'}", hasSize(1));
  }

  @Test
  void theOrderOfScopesAndDogsIsOfNoAccount() {
    wish("{'id':'i-1','key':'k','scopes':['records:write','records:read'],'dogs':['b','a']}")
        .then()
        .statusCode(201)
        .body("dogs", contains("a", "b"));
    wish("{'id':'i-1','key':'k','scopes':['records:read','records:write'],'dogs':['a','b']}")
        .then()
        .statusCode(200);
  }

  @Test
  void withoutAnIdTheServiceMakesOneAndKeepsIt() {
    String body = "{'id':'i-1','scopes':['records:read']}";
    String key = wish(body).then().statusCode(201).extract().path("key");

    wish(body).then().statusCode(200).body("key", equalTo(key));
  }

  @Test
  void keysAreListedWithoutTheirSecrets() {
    wish(PHONE);
    wish("{'id':'i-2','key':'pupil','scopes':['records:read'],'dogs':['juniper']}");

    Response list = club.get("/access-keys");

    list.then()
        .statusCode(200)
        .body("accessKeys", hasSize(3))
        .body(
            "accessKeys.find{it.key=='phone-1'}",
            equalTo(
                Map.of(
                    "key", "phone-1",
                    "label", "Phone",
                    "scopes", List.of("records:write", "records:read"),
                    "issued", "2026-02-01T08:00:00Z")))
        .body("accessKeys.find{it.key=='pupil'}.dogs", contains("juniper"));
    assertThat(list.asString()).doesNotContainIgnoringCase("secret").doesNotContain("hash");
  }

  @Test
  void aRevokedKeyOpensNothingFromThenOn() {
    Club phone = club.withKey("phone", "'records:read','club:manage'");
    phone.get("/digest").then().statusCode(200);

    Response revoked = club.given().delete(club.path("/access-keys/phone"));

    revoked.then().statusCode(200).body("key", equalTo("phone"));
    phone.get("/digest").then().statusCode(401);
    phone.send(Said.dog("juniper")).then().statusCode(401);
    assertThat(club.given().delete(club.path("/access-keys/phone")).asString())
        .isEqualTo(revoked.asString());
    club.get("/access-keys")
        .then()
        .body("accessKeys.find{it.key=='phone'}.revoked", equalTo(revoked.path("revoked")));
    wish("{'id':'issue-phone','key':'phone','scopes':['records:read','club:manage']}")
        .then()
        .statusCode(200);
    phone.get("/digest").then().statusCode(401);
  }

  @Test
  void aKeyMayRevokeItselfAndUnknownOnesAreNotFound() {
    Club phone = club.withKey("phone", "'club:manage'");

    phone.given().delete(club.path("/access-keys/nobody")).then().statusCode(404);
    phone.given().delete(club.path("/access-keys/phone")).then().statusCode(200);
    phone.given().delete(club.path("/access-keys/phone")).then().statusCode(401);
  }

  @Test
  void theHashOfASecretIsNowhereToBeSeen() {
    wish(PHONE);
    String feed = club.get("/events").asString();
    String lines =
        club.given().header("Accept", "application/x-ndjson").get(club.path("/events")).asString();
    String fate = club.get("/events/i-1").asString();
    club.given().delete(club.path("/access-keys/phone-1"));

    assertThat(List.of(feed, lines, fate, club.get("/events").asString()))
        .allSatisfy(
            answer ->
                assertThat(answer)
                    .contains("access-key.issued.v1")
                    .doesNotContainIgnoringCase("secret")
                    .doesNotContainIgnoringCase("hash"));
  }

  private Response register(String body) {
    return service
        .as(service.hostKey())
        .contentType("application/json")
        .body(json(body))
        .post("/v1/clubs");
  }

  @Test
  void aClubRegistersOnce() {
    String id = "new-" + club.id();
    String body =
        "{'id':'c-1','club':'%s','name':'Dune Runners','timeZone':'Europe/Lisbon','defaults':{'spacing':0.6}}"
            .formatted(id);
    String accessKey =
        register(body).then().statusCode(201).body("club", equalTo(id)).extract().path("accessKey");

    register(body).then().statusCode(200).body("$", equalTo(Map.of("club", id)));
    for (String other :
        List.of(
            body.replace("Dune", "Dawn"),
            body.replace("c-1", "c-2"),
            body.replace("0.6", "0.5"),
            body.replace("'name'", "'time':'2026-01-01T00:00:00Z','name'"))) {
      register(other)
          .then()
          .statusCode(409)
          .body("type", equalTo("urn:poleward:problem:contradicted"));
    }
    new Club(service, id, accessKey)
        .get("")
        .then()
        .statusCode(200)
        .body("name", equalTo("Dune Runners"))
        .body("defaults.spacing", equalTo(0.6f))
        .body("careLimits", equalTo(Map.of()))
        .body("event", equalTo("c-1"))
        .body("position", equalTo(2));
  }

  @Test
  void theFirstKeyHasEveryScopeButTheHosts() {
    club.get("/access-keys")
        .then()
        .body("accessKeys", hasSize(1))
        .body(
            "accessKeys[0].scopes.sort()",
            contains("club:manage", "records:read", "records:write", "timing:push"));
  }

  @Test
  void settingsChangeByEvents() {
    club.record(
        Said.event(
            "s-1",
            "club.settings-changed.v1",
            Said.at("10:00:00"),
            "{'name':'Renamed','careLimits':{'gapsPerSession':180}}"));

    club.get("")
        .then()
        .body("name", equalTo("Renamed"))
        .body("timeZone", equalTo("Europe/Lisbon"))
        .body("careLimits.gapsPerSession", equalTo(180));
  }

  /** Somebody else may have a club of any name, that of the host's key too. */
  @Test
  void aClubMayBeCalledHost() {
    String accessKey =
        register("{'id':'c-1','club':'host','name':'Host','timeZone':'Europe/Lisbon'}")
            .then()
            .statusCode(201)
            .body("accessKey", containsString("pw_host_"))
            .extract()
            .path("accessKey");

    new Club(service, "host", accessKey).get("/digest").then().statusCode(200);
    club.as(accessKey).get("/digest").then().statusCode(403);
    club.as(service.hostKey()).get("/digest").then().statusCode(200);
  }
}
