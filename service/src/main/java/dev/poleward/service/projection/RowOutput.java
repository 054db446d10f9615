package dev.poleward.service.projection;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/** Writes the bytes of a key or a row. Numbers are big-endian, so that keys sort as they count. */
final class RowOutput {

  private byte[] bytes = new byte[128];
  private int length;

  RowOutput octet(int value) {
    room(1);
    bytes[length++] = (byte) value;
    return this;
  }

  RowOutput number(long value) {
    room(8);
    for (int shift = 56; shift >= 0; shift -= 8) {
      bytes[length++] = (byte) (value >>> shift);
    }
    return this;
  }

  RowOutput whole(int value) {
    room(4);
    for (int shift = 24; shift >= 0; shift -= 8) {
      bytes[length++] = (byte) (value >>> shift);
    }
    return this;
  }

  /** Twelve bytes that sort as instants do, those before 1970 included. */
  RowOutput instant(Instant time) {
    return number(time.getEpochSecond() ^ Long.MIN_VALUE).whole(time.getNano());
  }

  /** An id as part of a key: it holds no zero byte, so that a zero byte ends it. */
  RowOutput id(String id) {
    return raw(id.getBytes(StandardCharsets.UTF_8)).octet(0);
  }

  /** The last id of a key: nothing follows, so nothing ends it. */
  RowOutput lastId(String id) {
    return raw(id.getBytes(StandardCharsets.UTF_8));
  }

  /** A text of known length. */
  RowOutput text(@Nullable String text) {
    if (text == null) {
      return whole(-1);
    }
    byte[] utf8 = text.getBytes(StandardCharsets.UTF_8);
    return whole(utf8.length).raw(utf8);
  }

  /** A word by its place in its enum; nothing said is a place of its own. */
  RowOutput word(@Nullable Enum<?> word) {
    return octet(word == null ? RowInput.NOTHING : word.ordinal());
  }

  /** A whole number, as a rule a small one: one byte, or five. */
  RowOutput small(@Nullable Integer value) {
    if (value == null) {
      return octet(RowInput.NOTHING);
    }
    if (value >= 0 && value < RowInput.LONG_FORM) {
      return octet(value);
    }
    return octet(RowInput.LONG_FORM).whole(value);
  }

  /** A number to the last bit. */
  RowOutput real(@Nullable Double value) {
    return value == null
        ? octet(RowInput.NOTHING)
        : octet(0).number(Double.doubleToRawLongBits(value));
  }

  /** A list, whose length comes first. */
  <T> RowOutput list(@Nullable List<T> values, BiConsumer<RowOutput, T> each) {
    if (values == null) {
      return whole(-1);
    }
    whole(values.size());
    values.forEach(value -> each.accept(this, value));
    return this;
  }

  RowOutput raw(byte[] value) {
    room(value.length);
    System.arraycopy(value, 0, bytes, length, value.length);
    length += value.length;
    return this;
  }

  /** Writes the length so far over four bytes that were left for it. */
  RowOutput lengthAt(int at) {
    for (int i = 0; i < 4; i++) {
      bytes[at + i] = (byte) (length >>> (24 - 8 * i));
    }
    return this;
  }

  byte[] done() {
    return Arrays.copyOf(bytes, length);
  }

  private void room(int more) {
    if (length + more > bytes.length) {
      bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, length + more));
    }
  }
}
