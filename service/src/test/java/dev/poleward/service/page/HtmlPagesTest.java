package dev.poleward.service.page;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.service.render.Studio;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Pages for a browser. */
class HtmlPagesTest {

  private final HtmlPages pages = new HtmlPages(new Studio());

  @Test
  void aNameIsTextWhateverItHolds() throws Exception {
    String name = "<script>alert(1)</script> & \"Juno\" 'x'";
    Document page = parsed(SamplePlans.of(name));

    assertThat(page.getElementsByTagName("script").getLength()).isZero();
    assertThat(page.getElementsByTagName("h1").item(0).getTextContent())
        .isEqualTo(name + ": session of 4 May 2026");
  }

  @Test
  void aPlanHasItsDrillsItsReasonsWhatToMindAndATableToFillIn() throws Exception {
    Document page = parsed(SamplePlans.of("Juniper"));
    String text = page.getDocumentElement().getTextContent();

    assertThat(text)
        .contains("4 poles behind a jump, 45° on the pole side, send")
        .contains("In all 6 of the 10 reps asked for: nothing else has its turn.")
        .contains("CAUTION It is warm: fewer reps & shade.")
        .contains("NWS <heat>")
        .contains("How it went")
        .contains("Setup 2, for drills 2, 3");
    // A header cell for each drill and one for what was not planned.
    Element blanks = (Element) page.getElementsByTagName("table").item(1);
    assertThat(blanks.getElementsByTagName("tr").getLength()).isEqualTo(1 + 3 + 1);
  }

  @Test
  void everyPictureIsToldInWordsAndNothingIsFetched() throws Exception {
    Document page = parsed(SamplePlans.of("Juniper"));

    List<Element> images = elements(page, "img");
    assertThat(images).hasSize(2);
    for (Element image : images) {
      assertThat(image.getAttribute("alt")).contains("from A").contains("pole 4");
      assertThat(image.getAttribute("src")).startsWith("data:image/svg+xml;base64,");
    }
    assertThat(elements(page, "link")).isEmpty();
    assertThat(elements(page, "a")).isEmpty();
  }

  @Test
  void thePolicyLetsItsOwnStyleAlone() throws Exception {
    String style =
        parsed(SamplePlans.of("Juniper")).getElementsByTagName("style").item(0).getTextContent();
    byte[] hash =
        MessageDigest.getInstance("SHA-256").digest(style.getBytes(StandardCharsets.UTF_8));

    assertThat(pages.policy())
        .contains("default-src 'none'")
        .contains("style-src 'sha256-" + Base64.getEncoder().encodeToString(hash) + "'");
  }

  @Test
  void headsOfTablesSayWhatTheyHead() throws Exception {
    for (Element head : elements(parsed(SamplePlans.of("Juniper")), "th")) {
      assertThat(head.getAttribute("scope")).isIn("col", "row");
    }
  }

  private Document parsed(PlanOnPaper plan) throws Exception {
    byte[] page = pages.of(PlanLeaves.sheaf(plan));
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(page));
  }

  private static List<Element> elements(Document page, String name) {
    List<Element> elements = new ArrayList<>();
    NodeList nodes = page.getElementsByTagName(name);
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }
}
