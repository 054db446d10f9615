package dev.poleward.service.http;

import dev.poleward.service.Club;
import dev.poleward.service.RunningService;
import dev.poleward.service.http.PlainRequest.Answered;
import java.util.List;
import java.util.Map;

/** Every route that the service has, filled in with things that a furnished club has. */
final class EveryRoute {

  private static final Map<String, String> IN_PATH =
      Map.ofEntries(
          Map.entry("event", "dog-juniper"),
          Map.entry("dog", "juniper"),
          Map.entry("handler", "h-1"),
          Map.entry("ground", "g-1"),
          Map.entry("class", "c-1"),
          Map.entry("programme", "p-1"),
          Map.entry("device", "t-1"),
          Map.entry("session", "s-1"),
          Map.entry("rep", "r-1"),
          Map.entry("key", "k-1"),
          Map.entry("plan", "l-1"),
          Map.entry("file", "docs.css"));

  private EveryRoute() {}

  /** Routes below a club, as {@code GET /v1/clubs/{club}}. */
  static List<String> ofClubs(RunningService service) {
    return service.routes().stream().filter(route -> route.contains("/v1/clubs/{club}")).toList();
  }

  /** Reads below a club. */
  static List<String> reads(RunningService service) {
    return ofClubs(service).stream().filter(route -> route.startsWith("GET ")).toList();
  }

  /** The path of a route in a club. */
  static String path(String route, String club) {
    String path = route.substring(route.indexOf(' ') + 1).replace("{club}", club);
    for (Map.Entry<String, String> each : IN_PATH.entrySet()) {
      path = path.replace("{" + each.getKey() + "}", each.getValue());
    }
    // Of all reads, this one alone has to be told which class it is for.
    return path.endsWith("/field-pack") ? path + "?class=c-1" : path;
  }

  /** Takes a route; with a body where one is wanted. */
  static Answered take(String route, String club, PlainRequest request) {
    String method = route.substring(0, route.indexOf(' '));
    String path = path(route, club);
    if (!method.equals("POST")) {
      return request.send(method, path);
    }
    boolean events = route.equals("POST /v1/clubs/{club}/events");
    String type = events ? Club.EVENT : "application/json";
    return request.with("Content-Type", type).send(method, path, body(route));
  }

  private static String body(String route) {
    String path = route.substring("POST ".length());
    return switch (path) {
      case "/v1/clubs" -> "{}";
      case "/v1/layouts" -> Said.json("{'setup':{'poles':4,'spacing':0.6,'leadIn':'none'}}");
      case "/v1/clubs/{club}/events" -> Said.session("s-1", "18:00:00");
      case "/v1/clubs/{club}/dogs/{dog}/plans" -> Said.json("{'id':'i-2'}");
      case "/v1/clubs/{club}/classes/{class}/running-order" -> "{}";
      case "/v1/clubs/{club}/access-keys" -> Said.json("{'id':'i-1','scopes':['records:read']}");
      default -> {
        ResourceDoors.Door door =
            ResourceDoors.ALL.stream()
                .filter(each -> each.path().equals(path))
                .findFirst()
                .orElseThrow();
        yield FlatBody.of(door, FlatBody.example(door)).body().toString();
      }
    };
  }

  /** Gives a club one of everything that the paths name. */
  static Club furnished(Club club) {
    club.record(
        Said.dog("juniper"),
        Said.handler("h-1", "First Example"),
        registered("ground", "'ground':'g-1'"),
        registered("class.formed", "'class':'c-1','name':'Evening'"),
        registered("device.enrolled", "'device':'t-1','kind':'timer'"),
        registered(
            "programme.published",
            "'programme':'p-1','version':1,'name':'Grid','stages':[{'stage':'four','poles':4,'leadIn':'none',"
                + "'entries':{'clocks':['12:00']},'handlings':[{'manoeuvre':'alongside'}]}]"),
        Said.session("s-1", "18:00:00"),
        Said.rep("r-1", "s-1", "juniper", "18:05:00", ",'note':'seen'"));
    club.withKey("k-1", "'records:read'");
    return club;
  }

  /** The same, with a plan for its dog. Plans do not move to other clubs with the other events. */
  static Club planned(Club furnished) {
    furnished
        .given()
        .header("Content-Type", "application/json")
        .body(Said.json("{'id':'plan-l-1','plan':'l-1'}"))
        .post(furnished.path("/dogs/juniper/plans"))
        .then()
        .statusCode(201);
    return furnished;
  }

  private static String registered(String family, String data) {
    String type = family.contains(".") ? family : family + ".registered";
    return Said.event("new-" + family, type + ".v1", "2026-01-11T10:00:00Z", "{" + data + "}");
  }
}
