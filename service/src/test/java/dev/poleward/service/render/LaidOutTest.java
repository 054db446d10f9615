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

  private static final List<String> NAMES =
      List.of(
          "Juniper",
          "Wolfgang-Amadeus von der Hohen Wiese VII",
          "Ö".repeat(40),
          "W".repeat(200),
          "Можжевельник",
          "Αρκεύθος",
          "ジュニパー・フォン・デア・ホーエン・ヴィーゼ",
          "عرعر الصغير",
          "जुनिपर",
          "🐕‍🦺 Juno");

  private static Stream<Arguments> pictures() {
    Stream<DogCurve> others =
        Stream.of(
            SampleCurves.withoutReps(),
            SampleCurves.oneAngle(),
            SampleCurves.roundTheClock(),
            SampleCurves.turned(),
            SampleCurves.closeTogether(),
            SampleCurves.narrowed());
    return Stream.concat(NAMES.stream().map(SampleCurves::usual), others)
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

  private static Stream<Arguments> ways() {
    Stream<DogWay> named = NAMES.stream().map(SampleWays::usual);
    Stream<DogWay> others =
        Stream.of(
            SampleWays.withoutReps(),
            SampleWays.startedLater(),
            SampleWays.closeTogether(),
            SampleWays.ofManyStages());
    return Stream.concat(named, others)
        .flatMap(
            way -> WIDTHS.stream().map(width -> Arguments.of(way, way.dog().callName(), width)));
  }

  @ParameterizedTest(name = "{1}, {2}")
  @MethodSource("ways")
  void textOfAWayHasRoom(DogWay of, String name, int width) {
    assertThat(name).isNotEmpty();
    assertTextHasRoom(WayPicture.of(of, width), width);
  }

  private static Stream<Arguments> rewards() {
    return Stream.concat(
            NAMES.stream().map(SampleRewards::usual),
            Stream.of(
                SampleRewards.nothingTold(),
                SampleRewards.overYears(),
                SampleRewards.ofALongLadder()))
        .flatMap(of -> WIDTHS.stream().map(width -> Arguments.of(of, of.dog().callName(), width)));
  }

  @ParameterizedTest(name = "{1}, {2}")
  @MethodSource("rewards")
  void textOfFadingRewardsHasRoom(DogRewards of, String name, int width) {
    assertThat(name).isNotEmpty();
    assertTextHasRoom(FadePicture.of(of, width), width);
  }

  private static Stream<Arguments> times() {
    return Stream.concat(
            NAMES.stream().map(SampleTimes::usual),
            Stream.of(
                SampleTimes.withoutRuns(),
                SampleTimes.oneRun(),
                SampleTimes.overYears(),
                SampleTimes.twoDays()))
        .flatMap(of -> WIDTHS.stream().map(width -> Arguments.of(of, of.dog().callName(), width)));
  }

  @ParameterizedTest(name = "{1}, {2}")
  @MethodSource("times")
  void textOfTimesHasRoom(DogTimes of, String name, int width) {
    assertThat(name).isNotEmpty();
    assertTextHasRoom(TimesPicture.of(of, width), width);
  }

  private static void assertTextHasRoom(Picture picture, int width) {
    List<Words> words = words(picture);
    Rectangle2D paper = new Rectangle2D.Double(0, 0, picture.width(), picture.height());

    assertThat(words).hasSizeGreaterThan(4);
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
