package dev.poleward.service.projection;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads what {@link RowOutput} wrote, in the same order. */
final class RowInput {

  private static final VarHandle LONG =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.BIG_ENDIAN);
  private static final VarHandle INT =
      MethodHandles.byteArrayViewVarHandle(int[].class, ByteOrder.BIG_ENDIAN);

  /** Stands for nothing where a word, a number or a small number may stand. */
  static final int NOTHING = 0xff;

  /** Before a whole number that has no room in one byte. */
  static final int LONG_FORM = 0xfe;

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

  int octet() {
    return bytes[at++] & 0xff;
  }

  <E extends Enum<E>> @Nullable E optionalWord(List<E> words) {
    int place = octet();
    return place == NOTHING ? null : words.get(place);
  }

  <E extends Enum<E>> E word(List<E> words) {
    return words.get(octet());
  }

  @Nullable Integer optionalSmall() {
    int value = octet();
    if (value == NOTHING) {
      return null;
    }
    return value == LONG_FORM ? whole() : value;
  }

  int small() {
    return present(optionalSmall());
  }

  @Nullable Double optionalReal() {
    return octet() == NOTHING ? null : Double.longBitsToDouble(number());
  }

  double real() {
    return present(optionalReal());
  }

  <T> @Nullable List<T> optionalList(Function<RowInput, T> each) {
    int size = whole();
    if (size < 0) {
      return null;
    }
    List<T> values = new ArrayList<>(Math.min(size, bytes.length - at));
    for (int i = 0; i < size; i++) {
      values.add(each.apply(this));
    }
    return values;
  }

  private static <T> T present(@Nullable T value) {
    if (value == null) {
      throw new IllegalStateException("a row lacks a number that every such row has");
    }
    return value;
  }

  byte[] raw(int length) {
    byte[] value = Arrays.copyOfRange(bytes, at, at + length);
    at += length;
    return value;
  }
}
