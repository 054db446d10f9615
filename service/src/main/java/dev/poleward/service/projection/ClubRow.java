package dev.poleward.service.projection;

import java.time.Instant;

/**
 * A club's counters.
 *
 * @param position number of recorded events
 * @param latestRecorded latest recording time
 * @param corrections number of recorded corrections
 */
record ClubRow(long position, Instant latestRecorded, long corrections) {

  static final ClubRow NEW = new ClubRow(0, Instant.EPOCH, 0);

  byte[] bytes() {
    return new RowOutput().number(position).instant(latestRecorded).number(corrections).done();
  }

  static ClubRow read(byte[] row) {
    RowInput in = new RowInput(row);
    return new ClubRow(in.number(), in.instant(), in.number());
  }
}
