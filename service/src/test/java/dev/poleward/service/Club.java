package dev.poleward.service;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.List;

/**
 * A club of a running service, and somebody who has a key to it.
 *
 * @param accessKey what requests are made with
 */
public record Club(RunningService service, String id, String accessKey) {

  /** The media type of one event. */
  public static final String EVENT = "application/cloudevents+json";

  /** The media type of many. */
  public static final String BATCH = "application/cloudevents-batch+json";

  /** The same club, for somebody with another key. */
  public Club as(String otherKey) {
    return new Club(service, id, otherKey);
  }

  /** A request with the key. */
  public RequestSpecification given() {
    return service.as(accessKey);
  }

  /** A path below the club's own. */
  public String path(String below) {
    return "/v1/clubs/" + id + below;
  }

  /** What a path below the club's own answers. */
  public Response get(String below) {
    return given().get(path(below));
  }

  /** Sends one event. */
  public Response send(String event) {
    return given().contentType(EVENT).body(event).post(path("/events"));
  }

  /** Sends many events at once. */
  public Response sendAll(List<String> events) {
    return given()
        .contentType(BATCH)
        .body("[" + String.join(",", events) + "]")
        .post(path("/events"));
  }

  /** Sends events that must all be new and in order. */
  public void record(String... events) {
    sendAll(List.of(events))
        .then()
        .statusCode(200)
        .body("accepted", org.hamcrest.Matchers.equalTo(events.length));
  }

  /** Makes another key with these scopes; JSON members besides, such as {@code "dogs"}. */
  public Club withKey(String key, String scopes, String... members) {
    String more = members.length == 0 ? "" : "," + String.join(",", members);
    String made =
        given()
            .contentType("application/json")
            .body(
                "{'id':'issue-%s','key':'%s','scopes':[%s]%s}"
                    .formatted(key, key, scopes, more)
                    .replace('\'', '"'))
            .post(path("/access-keys"))
            .then()
            .statusCode(201)
            .extract()
            .path("accessKey");
    return as(made);
  }
}
