package dev.poleward.load.drill;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.charset.Charset;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Byte sequences by which something that is to be gone would be recognised in a file, each a text
 * of Latin-1, a character a byte. For one thread.
 */
public final class Traces {

  private static final int PIECE = 16;
  private static final int STEP = 4;
  private static final int BITS_OF_BYTE = 8;
  private static final int BITS_OF_CHARACTER = 6;

  private final Set<String> sequences = new TreeSet<>();

  /** A text, however it may be written down. */
  public Traces text(String text) {
    for (Charset charset : List.of(UTF_8, UTF_16LE, UTF_16BE)) {
      byte[] bytes = text.getBytes(charset);
      sequences.add(new String(bytes, ISO_8859_1));
      for (int before = 0; before < 3; before++) {
        base64(bytes, before);
      }
    }
    StringBuilder escaped = new StringBuilder();
    text.chars()
        .forEach(
            each ->
                escaped.append(
                    each < 0x80 ? String.valueOf((char) each) : "\\u%04x".formatted(each)));
    sequences.add(escaped.toString());
    return this;
  }

  /** Base64 of bytes within a longer row of bytes: only the characters that these alone decide. */
  private void base64(byte[] bytes, int before) {
    byte[] shifted = new byte[before + bytes.length];
    System.arraycopy(bytes, 0, shifted, before, bytes.length);
    int first = (before * BITS_OF_BYTE + BITS_OF_CHARACTER - 1) / BITS_OF_CHARACTER;
    int end = shifted.length * BITS_OF_BYTE / BITS_OF_CHARACTER;
    sequences.add(Base64.getEncoder().encodeToString(shifted).substring(first, end));
    sequences.add(Base64.getUrlEncoder().encodeToString(shifted).substring(first, end));
  }

  /**
   * A wrapped key, whole or in part: every piece of it, save for those that another key has too, as
   * text and as the bytes that it stands for.
   */
  public Traces key(String wrapped, String another) {
    pieces(wrapped, another);
    pieces(decoded(wrapped), decoded(another));
    return this;
  }

  private static String decoded(String wrapped) {
    return new String(Base64.getUrlDecoder().decode(wrapped), ISO_8859_1);
  }

  private void pieces(String of, String another) {
    for (int from = 0; from + PIECE <= of.length(); from += STEP) {
      String piece = of.substring(from, from + PIECE);
      if (!another.contains(piece)) {
        sequences.add(piece);
      }
    }
  }

  /** How many sequences there are. */
  public int size() {
    return sequences.size();
  }

  /** How many of them are in these bytes. */
  long countIn(byte[] bytes) {
    String content = new String(bytes, ISO_8859_1);
    return sequences.stream().filter(content::contains).count();
  }
}
