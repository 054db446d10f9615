package dev.poleward.service.render;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.service.render.MasteryPictures.Kind;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The pictures in the documentation are what the service paints. With {@code -DpaintDocs=true} they
 * are painted anew.
 */
class DocumentedPicturesTest {

  // Surefire starts us in the folder of the module.
  private static final Path DOCS = Path.of("..", "docs", "pictures");

  @ParameterizedTest
  @CsvSource({"CURVE,curve.svg,800", "CLOCK,clock.svg,800", "CLOCK,clock-on-a-phone.svg,360"})
  void documentedPicturesAreUpToDate(Kind kind, String name, int width) throws IOException {
    assertUpToDate(MasteryPictures.draw(SampleCurves.usual("Juniper"), kind, width), name);
  }

  @ParameterizedTest
  @CsvSource({"layout.svg,800", "layout-on-a-phone.svg,360"})
  void documentedLayoutsAreUpToDate(String name, int width) throws IOException {
    assertUpToDate(LayoutPicture.of(SampleLayouts.usual(), width), name);
  }

  @ParameterizedTest
  @CsvSource({"way.svg,800", "way-on-a-phone.svg,360"})
  void documentedWaysAreUpToDate(String name, int width) throws IOException {
    assertUpToDate(WayPicture.of(SampleWays.usual("Juniper"), width), name);
  }

  @ParameterizedTest
  @CsvSource({"rewards.svg,800", "rewards-on-a-phone.svg,360"})
  void documentedRewardsAreUpToDate(String name, int width) throws IOException {
    assertUpToDate(FadePicture.of(SampleRewards.usual("Juniper"), width), name);
  }

  @ParameterizedTest
  @CsvSource({"times.svg,800", "times-on-a-phone.svg,360"})
  void documentedTimesAreUpToDate(String name, int width) throws IOException {
    assertUpToDate(TimesPicture.of(SampleTimes.usual("Juniper"), width), name);
  }

  private static void assertUpToDate(Picture picture, String name) throws IOException {
    byte[] painted = new Studio().svg(picture);
    Path file = DOCS.resolve(name);
    if (Boolean.getBoolean("paintDocs")) {
      Files.createDirectories(DOCS);
      Files.write(file, painted);
    }

    assertThat(Files.readString(file)).isEqualTo(new String(painted, StandardCharsets.UTF_8));
  }
}
