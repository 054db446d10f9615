package dev.poleward.service.projection;

import java.time.Instant;

/**
 * What is known of an event id.
 *
 * @param position the club's count when it was first recorded
 * @param offset where in the club's partition that was
 * @param hash of its content
 * @param repeated how often the same came again
 * @param contradicted how often other content came under its id
 */
@SuppressWarnings("ArrayRecordComponent") // never compared by equals, and made a million times
record EventRow(long position, long offset, byte[] hash, long repeated, long contradicted) {

  byte[] bytes() {
    return new RowOutput()
        .number(position)
        .number(offset)
        .raw(hash)
        .number(repeated)
        .number(contradicted)
        .done();
  }

  static EventRow read(byte[] row) {
    RowInput in = new RowInput(row);
    return new EventRow(in.number(), in.number(), in.raw(32), in.number(), in.number());
  }

  EventRow repeatedOnceMore() {
    return new EventRow(position, offset, hash, repeated + 1, contradicted);
  }

  EventRow contradictedOnceMore() {
    return new EventRow(position, offset, hash, repeated, contradicted + 1);
  }

  /**
   * The first applied announcement of an entity.
   *
   * @param position of the announcing event
   * @param recorded when that was recorded
   */
  record EntityRow(long position, Instant recorded) {
    byte[] bytes() {
      return new RowOutput().number(position).instant(recorded).done();
    }

    static EntityRow read(byte[] row) {
      RowInput in = new RowInput(row);
      return new EntityRow(in.number(), in.instant());
    }
  }
}
