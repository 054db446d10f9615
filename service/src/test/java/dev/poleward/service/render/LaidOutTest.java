package dev.poleward.service.render;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.layout.Layout;
import dev.poleward.service.render.Mark.Words;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** No text lies on other text or leaves the paper, whoever the dog is and however wide it is. */
class LaidOutTest {

  private static final List<Integer> WIDTHS = List.of(320, 360, 540, 719, 720, 800, 960, 1_200);

  private static Stream<Arguments> pictures() {
    return Stream.of(
            SampleCurves.usual("Juniper"),
            SampleCurves.withoutReps(),
            SampleCurves.oneAngle(),
            SampleCurves.roundTheClock(),
            SampleCurves.turned(),
            SampleCurves.closeTogether(),
            SampleCurves.narrowed(),
            SampleCurves.usual("Wolfgang-Amadeus von der Hohen Wiese VII"),
            SampleCurves.usual("Ö".repeat(40)),
            SampleCurves.usual("W".repeat(200)),
            SampleCurves.usual("Можжевельник"),
            SampleCurves.usual("Αρκεύθος"),
            SampleCurves.usual("ジュニパー・フォン・デア・ホーエン・ヴィーゼ"),
            SampleCurves.usual("عرعر الصغير"),
            SampleCurves.usual("जुनिपर"),
            SampleCurves.usual("🐕‍🦺 Juno"))
        .flatMap(
            of ->
                Stream.of(MasteryPictures.Kind.values())
                    .flatMap(
                        kind ->
                            WIDTHS.stream()
                                .map(width -> Arguments.of(of, of.callName(), kind, width))));
  }

  @ParameterizedTest(name = "{1}, {2}, {3}")
  @MethodSource("pictures")
  void textHasRoom(DogCurve of, String name, MasteryPictures.Kind kind, int width) {
    assertThat(name).isNotEmpty();
    assertTextHasRoom(MasteryPictures.draw(of, kind, width), width);
  }

  private static Stream<Arguments> layouts() {
    return SampleLayouts.all()
        .flatMap(layout -> WIDTHS.stream().map(width -> Arguments.of(layout, width)));
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void textOfALayoutHasRoom(Layout layout, int width) {
    assertTextHasRoom(LayoutPicture.of(layout, width), width);
  }

  private static void assertTextHasRoom(Picture picture, int width) {
    List<Words> words = words(picture);
    Rectangle2D paper = new Rectangle2D.Double(0, 0, picture.width(), picture.height());

    assertThat(words).hasSizeGreaterThan(10);
    for (int i = 0; i < words.size(); i++) {
      Rectangle2D box = words.get(i).box();
      assertThat(paper.contains(box)).as("%s on the paper", words.get(i)).isTrue();
      for (Words other : words.subList(i + 1, words.size())) {
        assertThat(Room.around(words.get(i)).intersects(Room.around(other)))
            .as("%s on %s", words.get(i), other)
            .isFalse();
      }
    }
    assertThat(picture.width() * picture.scale()).isEqualTo(width);
  }

  private static List<Words> words(Picture picture) {
    return picture.marks().stream()
        .filter(Words.class::isInstance)
        .map(Words.class::cast)
        .filter(each -> !each.text().isEmpty())
        .toList();
  }
}
