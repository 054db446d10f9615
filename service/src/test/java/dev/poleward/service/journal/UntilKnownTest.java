package dev.poleward.service.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeoutException;
import org.apache.kafka.common.errors.TopicAuthorizationException;
import org.apache.kafka.common.errors.UnknownTopicOrPartitionException;
import org.junit.jupiter.api.Test;

/** A topic that was created a moment ago is asked for again until the broker knows it. */
class UntilKnownTest {

  private static final Duration PAUSE = Duration.ofMillis(1);

  private final UntilKnown patient = new UntilKnown(Duration.ofMinutes(10), PAUSE);
  private int asked;

  private static Exception unknown() {
    return new ExecutionException(new UnknownTopicOrPartitionException("no such topic here"));
  }

  /** Answers after that many failures. */
  private String after(int failures, Exception failure) throws Exception {
    asked++;
    if (asked <= failures) {
      throw failure;
    }
    return "known";
  }

  @Test
  void itIsAskedForAgainWhileItIsNotKnown() throws Exception {
    assertThat(patient.<String, Exception>answer(() -> after(3, unknown()))).isEqualTo("known");
    assertThat(asked).isEqualTo(4);
  }

  @Test
  void whatIsKnownIsAskedForOnce() throws Exception {
    assertThat(patient.<String, Exception>answer(() -> after(0, unknown()))).isEqualTo("known");
    assertThat(asked).isEqualTo(1);
  }

  @Test
  void aBrokerThatNeverKnowsItIsGivenUp() {
    UntilKnown impatient = new UntilKnown(Duration.ZERO, PAUSE);
    Exception failure = unknown();

    assertThatThrownBy(() -> impatient.answer(() -> after(Integer.MAX_VALUE, failure)))
        .isSameAs(failure);
    assertThat(asked).isEqualTo(1);
  }

  @Test
  void otherFailuresAreToldAtOnce() {
    for (Exception failure :
        new Exception[] {
          new ExecutionException(new TopicAuthorizationException("not for you")),
          new TimeoutException("silence"),
          new JournalException("broken")
        }) {
      asked = 0;

      assertThatThrownBy(() -> patient.answer(() -> after(1, failure))).isSameAs(failure);
      assertThat(asked).isEqualTo(1);
    }
  }

  @Test
  void whoeverStopsTheThreadStopsTheAsking() {
    assertThatThrownBy(
            () ->
                patient.answer(
                    () -> {
                      Thread.currentThread().interrupt();
                      return after(Integer.MAX_VALUE, unknown());
                    }))
        .isInstanceOf(InterruptedException.class);
    assertThat(Thread.interrupted()).as("taken by the exception").isFalse();
  }
}
