package dev.poleward.service.render;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.service.render.MasteryPictures.Kind;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** A picture says in words all that it shows, to whoever cannot see it. */
class InWordsTest {

  private final Studio studio = new Studio();

  @ParameterizedTest
  @EnumSource
  void anSvgIsOneImageWithATitleAndADescription(Kind kind) throws Exception {
    Element svg =
        parsed(studio.svg(MasteryPictures.draw(SampleCurves.usual("Juniper"), kind, 800)));

    assertThat(svg.getAttribute("role")).isEqualTo("img");
    assertThat(svg.getAttribute("aria-labelledby")).isEqualTo("poleward-title poleward-in-words");
    assertThat(text(svg, "title")).isEqualTo("Juniper: entries made by entry angle");
    assertThat(text(svg, "desc"))
        .isEqualTo(
            "Dog Juniper. Entries made: 4 poles, without help. A rep counts half after 30 days."
                + " Aged to 2026-05-04. Pole side. From 12:30 to 5:30. The dog meets pole 1 first. 151"
                + " of 187 reps made (weight 84.2). 80% made at 48.3° (41.2° to 55.9°), 95% limits by"
                + " profile likelihood. By angle: 0° (12:00) 30 of 30 made, weighted 100% (89% to"
                + " 100%); 15° (12:30) 23 of 24 made, weighted 96% (80% to 99%); 30° (1:00) 37 of 40"
                + " made, weighted 93% (80% to 97%); 45° (1:30) 31 of 38 made, weighted 82% (67% to"
                + " 91%); 60° (2:00) 20 of 30 made, weighted 67% (49% to 81%); 75° (2:30) 8 of 16 made,"
                + " weighted 50% (28% to 72%); 90° (3:00) 2 of 9 made, weighted 22% (6% to 55%). Gap"
                + " side. From 11:30 to 6:30. The dog meets the gap first. 130 of 143 reps made (weight"
                + " 64.4). 80% made at 81.4° (68.8° to 101.7°), 95% limits by profile likelihood. By"
                + " angle: 0° (12:00) 30 of 30 made, weighted 100% (89% to 100%); 15° (11:30) 12 of 12"
                + " made, weighted 100% (76% to 100%); 30° (11:00) 26 of 28 made, weighted 93% (77% to"
                + " 98%); 45° (10:30) 24 of 25 made, weighted 96% (80% to 99%); 60° (10:00) 19 of 22"
                + " made, weighted 86% (67% to 95%); 75° (9:30) 8 of 10 made, weighted 80% (49% to"
                + " 94%); 90° (9:00) 9 of 12 made, weighted 75% (47% to 91%); 105° (8:30) 2 of 3 made,"
                + " weighted 67% (21% to 94%); 120° (8:00) 0 of 1 made, weighted 0% (0% to 79%).");
  }

  @ParameterizedTest
  @EnumSource
  void aPngHasTheSameInItsTextChunks(Kind kind) throws Exception {
    byte[] svg = studio.svg(MasteryPictures.draw(SampleCurves.usual("Možný 杜松"), kind, 360));
    byte[] png =
        studio.png(MasteryPictures.draw(SampleCurves.usual("Možný 杜松"), kind, 360)).orElseThrow();

    Map<String, String> texts = texts(png);
    assertThat(texts.get("Title")).isEqualTo(text(parsed(svg), "title")).startsWith("Možný 杜松:");
    assertThat(texts.get("Description")).isEqualTo(text(parsed(svg), "desc"));
    assertThat(ImageIO.read(new ByteArrayInputStream(png)).getWidth()).isEqualTo(720);
  }

  @Test
  void everyStatusIsSaidInWords() {
    assertThat(said(SampleCurves.withoutReps()))
        .contains("Pole side", "Not tried yet", "No reps.")
        .doesNotContain("%");
    assertThat(said(SampleCurves.oneAngle()))
        .contains("Not enough reps yet: it takes 5 recent ones, at two angles");
    assertThat(said(SampleCurves.roundTheClock()))
        .contains("The curve is above 80% up to 165°, the greatest angle tried (at least 120.4°)")
        .contains("The curve is below 80% from 0° on, the least angle tried (at most 30.2°)");
    assertThat(said(SampleCurves.turned()))
        .contains("No threshold: the share does not fall with the angle")
        .contains("Curve and steps disagree here: trust the reps more than the curve.");
    assertThat(said(SampleCurves.closeTogether())).contains("; and 26 angles more.");
    assertThat(said(SampleCurves.narrowed()))
        .contains(
            "Clean reps: any number of poles, from a tunnel, rear cross, dog on the left, with a lure.")
        .contains("All reps count alike. Up to 2026-05-04.")
        .contains("70% clean at 33.3° (at most 60°), 95% limits by Fieller's theorem");
  }

  @Test
  void aWaySaysWhereTheDogIsWhatIsNextAndHowEveryRungStands() throws Exception {
    Picture way = WayPicture.of(SampleWays.usual("Juniper"), 800);

    assertThat(way.title()).isEqualTo("Juniper: the way through the programme");
    assertThat(way.inWords())
        .startsWith(
            "Dog Juniper. The way through Round the clock, from three poles to twelve, version 1."
                + " No programme was assigned: this one is followed. As it stands on 2026-05-04. Now"
                + " in: Four poles round the clock. Next, in this order.")
        .contains(
            "Stage 1, Three poles from 9 to 3 o'clock. Done. Straight on: solid. Pole side: solid 30°"
                + " to 90°. Gap side: solid 30° to 60°; due 90°.")
        .contains(
            "Stage 2, Four poles round the clock. Now here: 5 of 13 rungs moved on from. Straight on:"
                + " solid. Pole side: solid 30° to 90°; untouched 105° to 135°. Gap side: slipping 30°;"
                + " learning 60°; untouched 90° to 135°.")
        .contains("From where the jump will be, pole side: untouched 45° to 135°.")
        .endsWith(
            "Stage 8, Twelve poles, straight on. Waits for: Six poles, straight on. A look ahead,"
                + " which may fail. Straight on: untouched.");
    assertThat(String.join(" ", shown(parsed(studio.svg(way)))))
        .contains("Now in: Four poles round the clock.")
        .contains("Now here: 5 of 13 rungs moved on from.");
    assertThat(WayPicture.of(SampleWays.startedLater(), 360).inWords())
        .contains("Stage 2, Four poles round the clock. Done. Straight on: passed over.");
  }

  @Test
  void aWayWithAnglesCloseTogetherSaysThatAMarkStandsForSeveral() throws Exception {
    String several = "one mark stands for them";

    assertThat(
            String.join(
                " ", shown(parsed(studio.svg(WayPicture.of(SampleWays.closeTogether(), 800))))))
        .contains(several);
    assertThat(
            String.join(
                " ", shown(parsed(studio.svg(WayPicture.of(SampleWays.usual("Juniper"), 320))))))
        .doesNotContain(several);
  }

  @Test
  void fadingRewardsSayTheStepTheAdviceAndEveryMonth() {
    Picture fading = FadePicture.of(SampleRewards.usual("Juniper"), 800);

    assertThat(fading.title()).isEqualTo("Juniper: how rewards fade");
    assertThat(fading.inWords())
        .startsWith(
            "Dog Juniper. How rewards fade, in Round the clock, from three poles to twelve, version"
                + " 1. As it stands on 2026-05-18. Void reps and reps with help are left out. Aim: 90%"
                + " clean; floor: 80%. Stage Three poles from 9 to 3 o'clock. On step 3 of 3: a toy at"
                + " the end, 1 reward a rep. 19 of the last 20 reps on this step were clean, 90% or more,"
                + " and it is the last: nothing is left to fade. Go on with step 3: a toy at the end, 1 reward a rep. Steps: 1, several along"
                + " the poles, 4 rewards a rep; 2, one along the poles, a toy at the end, 2 rewards a"
                + " rep; 3, a toy at the end, 1 reward a rep.")
        // 18 clean reps of 20 earned 4, as many 1 and a toy: half of 5 and half of 1 each [D].
        .contains("2026-02: a clean rep earned 2.5 food and 0.5 toys, over 36 reps.")
        .contains("2026-02: 36 of 40 reps clean, 90% (77% to 96%).")
        .doesNotContain("2026-03");
    assertThat(FadePicture.of(SampleRewards.nothingTold(), 360).inWords())
        .contains("Nothing to show: no rewards were told yet")
        .doesNotContain("Stage");
    assertThat(FadePicture.of(SampleRewards.overYears(), 360).inWords())
        .contains("2024-04: 1 of 1 rep clean, 100% (21% to 100%).")
        .contains("The last 24 months are shown.")
        .doesNotContain("2024-03:");
  }

  @Test
  void timesSayTheRhythmTheTrendAndWhereThereIsNone() {
    Picture times = TimesPicture.of(SampleTimes.usual("Juniper"), 800);

    assertThat(times.title()).isEqualTo("Juniper: how fast and how evenly");
    assertThat(times.inWords())
        .startsWith(
            "Dog Juniper. How fast and how evenly: 6 poles, pole side, 70 clean runs on 14 days. Of"
                + " 90 days up to 2026-05-18. Not shown: 6 poles, gap side 2.60 s (1 run); 12 poles,"
                + " straight on 4.40 s (1 run).")
        .contains("Surely slower than the others: gap 2–3, 1.2", " times. From gap to gap")
        .contains("; 2–3 0.49 s, half within 0.02 s, slow; 3–4")
        // Five gaps that each take 0.004 s less every six days: 0.023 s a week [D].
        .containsPattern(
            "0\\.02[0-6] s faster a week \\(95% limits 0\\.01\\d to 0\\.0[23]\\d s\\)\\.")
        .contains("Days: 2026-02-23 2.1");
    assertThat(TimesPicture.of(SampleTimes.withoutRuns(), 360).inWords())
        .isEqualTo(
            "Dog Bracken. How fast and how evenly. Of 90 days up to 2026-05-18. No clean run without"
                + " help has a time in these days. Not surely slower lately than before.");
    assertThat(TimesPicture.of(SampleTimes.oneRun(), 360).inWords())
        .contains("2.00 gaps a second. A run takes 1.50 s.")
        .contains("No device told the gaps of such a run: there is no rhythm to see.")
        .contains("All of these runs fell on one day: there is no trend to see.");
    assertThat(TimesPicture.of(SampleTimes.overYears(), 800).inWords())
        .contains("No change from week to week")
        .contains("The last 60 days: ");
  }

  /** What people see says the same as what is read out. */
  @Test
  void thePictureItselfShowsTheThresholdsToo() throws Exception {
    for (Kind kind : Kind.values()) {
      Element svg =
          parsed(studio.svg(MasteryPictures.draw(SampleCurves.usual("Juniper"), kind, 1_200)));
      assertThat(String.join(" ", shown(svg)).replace('\u00A0', ' '))
          .contains("80% made at 48.3° (41.2° to 55.9°)")
          .contains("80% made at 81.4° (68.8° to 101.7°)")
          .contains("151 of 187 reps made")
          .contains("Aged to 2026-05-04.");
    }
  }

  /** Names come from people; a picture stays a picture, whatever they write. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "a & b ]]> \"c\"",
        "tab\tand\nline\u0000\u0001\uFFFE end",
        "\u202Eturned\u202C",
        "&#0;",
        "\u200B",
        " \u00A0 "
      })
  void aNameIsTextAndNothingElse(String name) throws Exception {
    for (Kind kind : Kind.values()) {
      Element svg = parsed(studio.svg(MasteryPictures.draw(SampleCurves.usual(name), kind, 360)));
      assertThat(svg.getElementsByTagName("script").getLength()).isZero();
      assertThat(text(svg, "title")).endsWith(": entries made by entry angle");
      assertThat(text(svg, "title")).doesNotContain("\u202E", "\n", "\t");
      assertThat(
              texts(
                      studio
                          .png(MasteryPictures.draw(SampleCurves.usual(name), kind, 320))
                          .orElseThrow())
                  .get("Title"))
          .isEqualTo(text(svg, "title"));
    }
  }

  @Test
  void theSameAnswerIsTheSameBytes() {
    for (Kind kind : Kind.values()) {
      assertThat(new Studio().svg(MasteryPictures.draw(SampleCurves.turned(), kind, 800)))
          .isEqualTo(studio.svg(MasteryPictures.draw(SampleCurves.turned(), kind, 800)));
      assertThat(
              new Studio()
                  .png(MasteryPictures.draw(SampleCurves.turned(), kind, 800))
                  .orElseThrow())
          .isEqualTo(
              studio.png(MasteryPictures.draw(SampleCurves.turned(), kind, 800)).orElseThrow());
    }
  }

  private static String said(DogCurve of) {
    return MasteryPictures.draw(of, Kind.CLOCK, 800).inWords();
  }

  private static Element parsed(byte[] svg)
      throws ParserConfigurationException, SAXException, IOException {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
    assertThat(document.getDocumentElement().getNamespaceURI())
        .isEqualTo("http://www.w3.org/2000/svg");
    return document.getDocumentElement();
  }

  private static String text(Element svg, String element) {
    return svg.getElementsByTagName(element).item(0).getTextContent();
  }

  private static List<String> shown(Element svg) {
    NodeList texts = svg.getElementsByTagName("text");
    List<String> shown = new ArrayList<>();
    for (int i = 0; i < texts.getLength(); i++) {
      shown.add(texts.item(i).getTextContent());
    }
    return shown;
  }

  private static Map<String, String> texts(byte[] png) throws IOException {
    ImageReader reader = ImageIO.getImageReadersByFormatName("png").next();
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(png))) {
      reader.setInput(in);
      Node tree = reader.getImageMetadata(0).getAsTree("javax_imageio_png_1.0");
      Map<String, String> texts = new TreeMap<>();
      NodeList entries = ((Element) tree).getElementsByTagName("iTXtEntry");
      for (int i = 0; i < entries.getLength(); i++) {
        Element entry = (Element) entries.item(i);
        texts.put(entry.getAttribute("keyword"), entry.getAttribute("text"));
      }
      return texts;
    } finally {
      reader.dispose();
    }
  }
}
