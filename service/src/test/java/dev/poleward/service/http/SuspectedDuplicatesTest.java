package dev.poleward.service.http;

import static dev.poleward.service.http.Said.rep;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Reps that two phones may have logged, as a client sees them. */
@ExtendWith(SharedService.class)
class SuspectedDuplicatesTest {

  private static final String LIST = "/suspected-duplicates";

  private final Club club;

  SuspectedDuplicatesTest(Club club) {
    this.club = club;
  }

  @BeforeEach
  void furnish() {
    club.record(
        Said.dog("juniper"),
        Said.dog("bracken"),
        Said.handler("h-1", "First Example"),
        Said.session("s-1", "18:00:00"),
        Said.session("s-2", "19:00:00"),
        rep("r-1", "s-1", "juniper", "18:05:00", ""),
        rep("r-2", "s-1", "juniper", "18:05:03.5", ",'observer':'h-1'"),
        rep("r-3", "s-1", "juniper", "18:05:20", ""),
        rep("r-4", "s-1", "bracken", "18:06:00", ""),
        rep("r-5", "s-1", "bracken", "18:06:10", ""),
        rep("r-6", "s-2", "juniper", "19:05:00", ""),
        rep("r-7", "s-2", "juniper", "19:05:00", ""));
  }

  @Test
  void theyAreListedWithWhatToWithdraw() {
    club.get(LIST)
        .then()
        .statusCode(200)
        .body("suspectedDuplicates.second.rep", contains("r-2", "r-5", "r-7"))
        .body("suspectedDuplicates[0].first.rep", equalTo("r-1"))
        .body("suspectedDuplicates[0].seconds", equalTo(3.5f))
        .body("suspectedDuplicates[0].differs", contains("observer"))
        .body("suspectedDuplicates[0].second.observer", equalTo("h-1"))
        .body("suspectedDuplicates[0].withdraw", equalTo("log-r-2"))
        .body("suspectedDuplicates[1].differs", empty());
    club.get(LIST + "?within=17")
        .then()
        .body("suspectedDuplicates.second.rep", contains("r-2", "r-3", "r-5", "r-7"));
    club.get(LIST + "?asOf=2026-05-04T18:06:00Z")
        .then()
        .body("suspectedDuplicates.second.rep", contains("r-2"));
  }

  @Test
  void pagesLieEndToEnd() {
    for (int limit = 1; limit <= 4; limit++) {
      assertThat(paged(club.path(LIST + "?limit=" + limit), limit))
          .containsExactly("r-2", "r-5", "r-7");
    }
  }

  private List<String> paged(String first, int limit) {
    List<String> all = new ArrayList<>();
    String path = first;
    while (true) {
      Response page = club.given().get(path);
      page.then().statusCode(200);
      List<String> items = page.path("suspectedDuplicates.second.rep");
      assertThat(items).isNotEmpty().hasSizeLessThanOrEqualTo(limit);
      all.addAll(items);
      assertThat(all).as("pages end somewhere").hasSizeLessThan(10);
      String link = page.header("Link");
      if (link == null) {
        return all;
      }
      path = link.substring(1, link.indexOf('>'));
    }
  }

  /** However many sessions there are without any, one request does not look at all of them. */
  @Test
  void aPageThatLookedAtManySessionsLeadsOn() {
    List<String> sessions = new ArrayList<>();
    for (int i = 0; i < SuspicionRoutes.SESSIONS_MAX; i++) {
      sessions.add(Said.session("early-" + i, "08:00:00"));
    }
    int half = sessions.size() / 2;
    club.sendAll(sessions.subList(0, half)).then().body("accepted", equalTo(half));
    club.sendAll(sessions.subList(half, 2 * half)).then().body("accepted", equalTo(half));

    Response first = club.get(LIST);

    first.then().statusCode(200).body("suspectedDuplicates", empty());
    String link = first.header("Link");
    assertThat(paged(link.substring(1, link.indexOf('>')), 100))
        .containsExactly("r-2", "r-5", "r-7");
  }

  @Test
  void aNarrowedKeySeesItsDogs() {
    club.withKey("pupil", "'records:read'", "'dogs':['bracken']")
        .get(LIST)
        .then()
        .statusCode(200)
        .body("suspectedDuplicates.second.rep", contains("r-5"));
  }

  @Test
  void whatIsAskedIsJudgedInFull() {
    club.get(LIST + "?within=121&limit=0&cursor=bm93aGVyZQ")
        .then()
        .statusCode(400)
        .body("errors.parameter", contains("within", "limit", "cursor"));
  }
}
