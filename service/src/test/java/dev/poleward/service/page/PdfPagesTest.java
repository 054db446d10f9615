package dev.poleward.service.page;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.service.render.Studio;
import java.io.IOException;
import java.util.HashSet;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pages for the press. */
class PdfPagesTest {

  private final PdfPages pages = new PdfPages(new Studio());

  @Test
  void aPlanCanBeSearchedAndReadOut() throws IOException {
    try (PDDocument file = Loader.loadPDF(print("Juniper"))) {
      String text = new PDFTextStripper().getText(file);

      assertThat(text)
          .contains("Juniper: session of 4 May 2026")
          .contains("CAUTION It is warm: fewer reps & shade.")
          .contains("How it went");
      assertThat(file.getDocumentInformation().getTitle()).isEqualTo("Juniper: session plan");
      assertThat(file.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
      assertThat(file.getDocumentCatalog().getLanguage()).isEqualTo("en");
    }
  }

  @Test
  void itIsA4WithFontsOfItsOwn() throws IOException {
    try (PDDocument file = Loader.loadPDF(print("Juniper"))) {
      Set<String> fonts = new HashSet<>();
      for (PDPage page : file.getPages()) {
        assertThat(page.getMediaBox().getWidth())
            .isBetween(PDRectangle.A4.getWidth() - 1, PDRectangle.A4.getWidth() + 1);
        for (var name : page.getResources().getFontNames()) {
          var font = page.getResources().getFont(name);
          assertThat(font.isEmbedded()).as(font.getName()).isTrue();
          fonts.add(font.getName().replaceFirst("^[A-Z]{6}\\+", ""));
        }
      }
      assertThat(fonts).containsExactlyInAnyOrder("LiberationSans", "LiberationSans-Bold");
    }
  }

  @Test
  void theSamePrintIsTheSameBytes() {
    assertThat(print("Juniper")).isEqualTo(print("Juniper"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Wolfgang-Amadeus von der Hohen Wiese VII",
        "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW",
        "Можжевельник",
        "ジュニパー・フォン・デア・ホーエン・ヴィーゼ",
        "عرعر الصغير",
        "जुनिपर",
        "🐕‍🦺 Juno",
        "bell\u0007 and \u202Eturned"
      })
  void whateverADogIsCalledItsPlanIsPrinted(String name) throws IOException {
    try (PDDocument file = Loader.loadPDF(print(name))) {
      assertThat(new PDFTextStripper().getText(file)).contains("How it went");
      assertThat(file.getNumberOfPages()).isBetween(2, 4);
    }
  }

  private byte[] print(String dog) {
    return pages.of(PlanLeaves.sheaf(SamplePlans.of(dog))).orElseThrow();
  }
}
