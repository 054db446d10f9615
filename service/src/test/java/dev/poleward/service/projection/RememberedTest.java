package dev.poleward.service.projection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is made once is not made again until it could be something else. */
class RememberedTest {

  private static final int BYTES_MAX = 100_000;
  private static final int BYTES_EACH = 1_000;

  private final Remembered<String, String> remembered =
      new Remembered<>(BYTES_MAX, (_, made) -> made.length());

  private static String made(int number) {
    return Integer.toString(number).repeat(BYTES_EACH).substring(0, BYTES_EACH);
  }

  @Test
  void itIsKnownAtItsPositionAndNoOther() {
    remembered.kept("saltmarsh", 7, "reps", "", "made at 7");

    assertThat(remembered.known("saltmarsh", 7, "reps", "")).contains("made at 7");
    assertThat(remembered.known("saltmarsh", 8, "reps", "")).isEmpty();
    assertThat(remembered.known("saltmarsh", 6, "reps", "")).isEmpty();
  }

  @Test
  void itIsKnownOnItsDayAndNoOther() {
    remembered.kept("saltmarsh", 7, "curve", "2026-05-04", "of the 4th");

    assertThat(remembered.known("saltmarsh", 7, "curve", "2026-05-04")).contains("of the 4th");
    assertThat(remembered.known("saltmarsh", 7, "curve", "2026-05-05")).isEmpty();
    assertThat(remembered.known("saltmarsh", 7, "curve", "")).isEmpty();
  }

  @Test
  void clubsAndQuestionsAreToldApart() {
    remembered.kept("saltmarsh", 7, "reps", "", "one");
    remembered.kept("heathland", 7, "reps", "", "two");
    remembered.kept("saltmarsh", 7, "curve", "", "three");

    assertThat(remembered.known("saltmarsh", 7, "reps", "")).contains("one");
    assertThat(remembered.known("heathland", 7, "reps", "")).contains("two");
    assertThat(remembered.known("saltmarsh", 7, "curve", "")).contains("three");
    assertThat(remembered.known("heathland", 7, "curve", "")).isEmpty();
  }

  /** A club in use moves on all the time; what it has left behind takes no room from the rest. */
  @Test
  void theNextPositionTakesThePlaceOfTheOneBefore() {
    remembered.kept("heathland", 1, "reps", "", made(0));
    for (int position = 1; position <= 10_000; position++) {
      remembered.kept("saltmarsh", position, "reps", "", made(position));
    }

    assertThat(remembered.known("saltmarsh", 10_000, "reps", "")).contains(made(10_000));
    assertThat(remembered.known("heathland", 1, "reps", "")).contains(made(0));
  }

  @Test
  void noMoreIsHeldThanThereIsRoomFor() {
    List<String> questions = IntStream.range(0, 1_000).mapToObj(i -> "dog-" + i).toList();
    for (String question : questions) {
      remembered.kept("saltmarsh", 7, question, "", made(1));
    }

    long held =
        questions.stream()
            .map(question -> remembered.known("saltmarsh", 7, question, ""))
            .filter(Optional::isPresent)
            .count();
    assertThat(held).isBetween(1L, (long) BYTES_MAX / BYTES_EACH);
  }

  @Test
  void whatIsLargerThanTheRoomIsNotHeld() {
    remembered.kept("saltmarsh", 7, "reps", "", "x".repeat(BYTES_MAX));

    assertThat(remembered.known("saltmarsh", 7, "reps", "")).isEmpty();
  }
}
