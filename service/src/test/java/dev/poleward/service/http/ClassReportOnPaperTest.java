package dev.poleward.service.http;

import static dev.poleward.service.http.Said.event;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

/** The report of a class of twelve dogs on paper, whatever they are called. */
@ExtendWith(SharedService.class)
class ClassReportOnPaperTest {

  private static final String REPORT = "/classes/evening/report?asOf=2026-05-10T12:00:00Z";

  private static final List<String> NAMES =
      List.of(
          "Juniper",
          "Wolfgang-Amadeus von der Hohen Wiese VII",
          "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW",
          "Можжевельник",
          "Αρκεύθος",
          "ジュニパー・フォン・デア・ホーエン・ヴィーゼ",
          "عرعر الصغير",
          "जुनिपर",
          "🐕‍🦺 Juno",
          "<b>Bo</b> & Co",
          "Bracken",
          "No Reps");

  private final Club club;

  ClassReportOnPaperTest(Club club) {
    this.club = club;
  }

  @BeforeEach
  void furnish() {
    List<String> events = new ArrayList<>();
    events.add(
        event(
            "c",
            "class.formed.v1",
            "2026-01-10T10:00:00Z",
            "{'class':'evening','name':'Evening'}"));
    events.add(
        event(
            "o",
            "session.opened.v1",
            "2026-05-04T18:00:00Z",
            "{'session':'s-1','class':'evening'}"));
    events.add(Said.setup("up", "s-1", "18:01:00", 0, ""));
    for (int i = 0; i < NAMES.size(); i++) {
      String dog = "dog-%02d".formatted(i);
      events.add(
          event(
              "e-" + dog,
              "dog.registered.v1",
              "2026-01-10T10:00:00Z",
              "{'dog':'%s','callName':'%s','born':'2022-03-01'}".formatted(dog, NAMES.get(i))));
      events.add(
          event(
              "j-" + dog,
              "class.joined.v1",
              "2026-01-10T10:00:00Z",
              "{'class':'evening','dog':'%s'}".formatted(dog)));
      for (int rep = 0; rep < 12 && i < NAMES.size() - 1; rep++) {
        events.add(
            Said.rep(
                "r-%d-%d".formatted(i, rep),
                "s-1",
                dog,
                "18:%02d:%02d".formatted(5 + rep, i),
                ",'setup':{'poles':4,'spacing':0.6,'leadIn':'none','angle':%d}"
                    .formatted(15 * rep - 90)));
      }
    }
    club.record(events.toArray(String[]::new));
  }

  @Test
  void inABrowserEveryDogHasItsSection() throws Exception {
    Document page =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(get(club, "text/html")));

    NodeList heads = page.getElementsByTagName("h1");
    List<String> titles = new ArrayList<>();
    for (int i = 0; i < heads.getLength(); i++) {
      titles.add(heads.item(i).getTextContent());
    }
    assertThat(titles).hasSize(1 + NAMES.size()).startsWith("Evening").containsAll(NAMES);
    assertThat(page.getElementsByTagName("b").getLength()).isZero();
    // Eleven curves: a dog without reps has none.
    assertThat(page.getElementsByTagName("img").getLength()).isEqualTo(NAMES.size() - 1);
    assertThat(page.getDocumentElement().getTextContent())
        .contains("It has no reps in these days.")
        .contains("1 dog without reps in these days.");
  }

  @Test
  void onPaperEveryDogHasOnePage() throws IOException {
    try (PDDocument file = Loader.loadPDF(get(club, "application/pdf"))) {
      PDFTextStripper text = new PDFTextStripper();
      assertThat(text.getText(file)).contains("Juniper").contains("Можжевельник", "<b>Bo</b> & Co");
      assertThat(file.getNumberOfPages()).isBetween(1 + NAMES.size(), 3 + NAMES.size());
    }
  }

  @Test
  void aMemberSeesTheOwnDogsPageAlone() throws IOException {
    Club pupil = club.withKey("pupil", "'records:read'", "'dogs':['dog-00']");

    String page = new String(get(pupil, "text/html"), StandardCharsets.UTF_8);
    assertThat(page).contains("Juniper").doesNotContain("Bracken", "Who was there");
    try (PDDocument file = Loader.loadPDF(get(pupil, "application/pdf"))) {
      assertThat(file.getNumberOfPages()).isEqualTo(1);
    }
  }

  @Test
  void aDogThatRestsSaysSoOnItsOwnPage() throws Exception {
    club.record(
        event("rest", "dog.rested.v1", "2026-05-05T10:00:00Z", "{'dog':'dog-00','reason':'lame'}"));

    Document page =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(get(club, "text/html")));

    NodeList leaves = page.getElementsByTagName("section");
    assertThat(leaves.item(0).getTextContent()).doesNotContain("STOP");
    assertThat(leaves.item(1).getTextContent()).contains("Juniper").contains("STOP");
  }

  private static byte[] get(Club as, String form) {
    return as.given()
        .header("Accept", form)
        .get(as.path(REPORT))
        .then()
        .statusCode(200)
        .extract()
        .asByteArray();
  }
}
