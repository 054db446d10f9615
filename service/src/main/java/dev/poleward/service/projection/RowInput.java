package dev.poleward.service.projection;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Reads what {@link RowOutput} wrote, in the same order. */
final class RowInput {

  private static final VarHandle LONG =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.BIG_ENDIAN);
  private static final VarHandle INT =
      MethodHandles.byteArrayViewVarHandle(int[].class, ByteOrder.BIG_ENDIAN);

  private final byte[] bytes;
  private int at;

  RowInput(byte[] bytes) {
    this.bytes = bytes;
  }

  /** Passes over a first byte that says what kind of row this is. */
  RowInput after(int kind) {
    if (bytes[at] != kind) {
      throw new IllegalStateException("a row of kind " + bytes[at] + " where " + kind + " belongs");
    }
    at++;
    return this;
  }

  long number() {
    long value = (long) LONG.get(bytes, at);
    at += 8;
    return value;
  }

  int whole() {
    int value = (int) INT.get(bytes, at);
    at += 4;
    return value;
  }

  Instant instant() {
    long seconds = number() ^ Long.MIN_VALUE;
    return Instant.ofEpochSecond(seconds, whole());
  }

  @Nullable String optionalText() {
    int length = whole();
    if (length < 0) {
      return null;
    }
    String text = new String(bytes, at, length, StandardCharsets.UTF_8);
    at += length;
    return text;
  }

  String text() {
    String text = optionalText();
    if (text == null) {
      throw new IllegalStateException("a row lacks a text that every such row has");
    }
    return text;
  }

  byte[] raw(int length) {
    byte[] value = Arrays.copyOfRange(bytes, at, at + length);
    at += length;
    return value;
  }
}
