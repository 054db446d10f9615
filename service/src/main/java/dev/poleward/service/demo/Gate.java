package dev.poleward.service.demo;

import static dev.poleward.service.demo.Telling.data;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.time.OffsetDateTime;

/**
 * A timer at the poles of the class. It knows neither dogs nor sessions; its clock begins anew each
 * time that it is switched on. For one thread.
 */
final class Gate {

  /** Its id. */
  static final String ID = "gate-1";

  /** So long after a run its rep is logged. */
  private static final int SECONDS_TO_LOG = 8;

  private static final double MILLIS_A_SECOND = 1_000;
  private static final int MILLIS_TO_SEND = 400;
  private static final long MILLIS_TO_START = 30_000;

  private final Telling telling;
  private OffsetDateTime switchedOn;
  private int sequence;

  Gate(Telling telling, OffsetDateTime switchedOn) {
    this.telling = telling;
    this.switchedOn = switchedOn;
  }

  void switchOn(OffsetDateTime time) {
    switchedOn = time;
  }

  /** Times a run of which the rep is logged then. */
  void time(double seconds, OffsetDateTime logged) {
    OffsetDateTime ended = logged.minusSeconds(SECONDS_TO_LOG);
    long exit = MILLIS_TO_START + Duration.between(switchedOn, ended).toMillis();
    ObjectNode data =
        data()
            .put("device", ID)
            .put("sequence", ++sequence)
            .put("deviceClock", exit + MILLIS_TO_SEND)
            .put("entryAt", exit - Math.round(MILLIS_A_SECOND * seconds))
            .put("exitAt", exit);
    telling.tell(Source.GATE, "timing.recorded.v1", ended, data);
  }
}
