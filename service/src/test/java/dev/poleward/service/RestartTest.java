package dev.poleward.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.service.http.HttpSettings;
import dev.poleward.service.http.HttpSettings.Encryption;
import dev.poleward.service.journal.CannotStart;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A service that stops and starts again on its folder is the same service. */
class RestartTest {

  private static final List<String> READS =
      List.of(
          "",
          "/digest",
          "/events",
          "/events/rep-1",
          "/events/dog-1",
          "/waiting",
          "/dogs",
          "/dogs/juniper/reps",
          "/handlers",
          "/handlers/h-2",
          "/sessions",
          "/sessions/s-1",
          "/access-keys",
          "/dogs?knownAt=2026-05-05T00:00:00Z");

  @TempDir private Path folder;

  private static String event(String id, String type, String data, String more) {
    return """
        {'specversion':'1.0','id':'%s','source':'/apps/field-notes','type':'%s',\
        'time':'2026-05-04T18:00:00.5+01:00','data':{%s}%s}\
        """
        .formatted(id, type, data, more)
        .replace('\'', '"');
  }

  private static void furnish(Club club) {
    String rep = "'session':'s-1','dog':'juniper','manoeuvre':'send','outcome':'clean'";
    club.record(
        event("dog-1", "dog.registered.v1", "'dog':'juniper','callName':'Juniper'", ""),
        event("h-1", "handler.registered.v1", "'handler':'h-1','name':'First Example'", ""),
        event("h-2", "handler.registered.v1", "'handler':'h-2','name':'Second Example'", ""),
        event("open-1", "session.opened.v1", "'session':'s-1'", ""),
        event(
            "rep-1", "rep.logged.v1", "'rep':'r-1'," + rep + ",'note':'Kept','handler':'h-1'", ""),
        event(
            "rep-2", "rep.logged.v1", "'rep':'r-2'," + rep + ",'note':'Gone','handler':'h-2'", ""),
        event("lost", "dog.rested.v1", "'dog':'nobody'", ",'field':'wet','attempt':3"),
        event(
            "old",
            "load.noted.v1",
            "'dog':'juniper','kind':'walk','minutes':5",
            ",'recordedtime':'2026-05-04T20:00:00Z'"));
    club.send(event("dog-1", "dog.registered.v1", "'dog':'juniper','callName':'Juniper'", ""));
    club.send(event("dog-1", "dog.registered.v1", "'dog':'juniper','callName':'June'", ""));
    club.given().delete(club.path("/handlers/h-2/personal-data")).then().statusCode(200);
    club.withKey("revoked", "'records:read'");
    club.given().delete(club.path("/access-keys/revoked")).then().statusCode(200);
  }

  private static List<String> answers(Club club) {
    List<String> answers = new ArrayList<>();
    for (String read : READS) {
      Response answer = club.get(read);
      answers.add(read + " " + answer.statusCode() + answer.header("ETag") + answer.asString());
    }
    return answers;
  }

  @Test
  void everyAnswerIsTheSameToTheByte() throws IOException {
    Path data = folder.resolve("data");
    List<String> before;
    String hostKey;
    String club;
    String accessKey;
    try (RunningService service = RunningService.on(data)) {
      Club made = service.newClub();
      club = made.id();
      accessKey = made.accessKey();
      hostKey = service.hostKey();
      furnish(made);
      before = answers(made);
    }
    assertThat(String.join("", before)).contains("Kept").doesNotContain("Gone");

    try (RunningService again = RunningService.on(data)) {
      assertThat(again.hostKey()).isEqualTo(hostKey);
      assertThat(answers(new Club(again, club, accessKey))).isEqualTo(before);
      assertThat(again.as(hostKey).get("/v1/clubs/" + club).statusCode()).isEqualTo(200);
    }

    FolderRemoval.remove(data.resolve("rows"));
    try (RunningService rebuilt = RunningService.on(data)) {
      assertThat(answers(new Club(rebuilt, club, accessKey))).isEqualTo(before);
    }
  }

  @Test
  void keysAreForTheOwnerOfTheFolderAlone() throws IOException {
    Path data = folder.resolve("data");
    try (RunningService service = RunningService.on(data)) {
      for (String key : List.of("host.key", "master.key")) {
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(data.resolve(key))))
            .isEqualTo("rw-------");
      }
      assertThat(service.hostKey()).startsWith("pw_host_").doesNotContain("\n");
      assertThatThrownBy(() -> RunningService.on(data))
          .isInstanceOf(CannotStart.class)
          .hasMessageContaining(data.toString());
      assertThatThrownBy(() -> onPort(service.port()))
          .isInstanceOf(CannotStart.class)
          .hasMessageContaining("Port " + service.port());
    }
  }

  /** Two journals as long as each other, so that offsets alone do not tell them apart. */
  @Test
  void rowsOfAnotherJournalAreRefused() throws IOException {
    Path data = folder.resolve("data");
    Path other = folder.resolve("other");
    for (Path each : List.of(data, other)) {
      try (RunningService service = RunningService.on(each)) {
        service.newClub();
      }
    }
    FolderRemoval.remove(data.resolve("journal"));
    Files.move(other.resolve("journal"), data.resolve("journal"));

    assertThatThrownBy(() -> RunningService.on(data).close())
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining(data.toString())
        .hasMessageContaining("another journal");
  }

  private void onPort(int port) {
    HttpSettings taken = new HttpSettings(Settings.HOST, port, new Encryption.None());
    RunningService.with(folder.resolve("other"), taken).close();
  }
}
