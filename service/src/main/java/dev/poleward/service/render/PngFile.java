package dev.poleward.service.render;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * An image with a palette as a PNG file [S: W3C, Portable Network Graphics (PNG) Specification,
 * third edition]. The JDK's own writer filters every line as if it were a photograph, which takes
 * time and makes more of such an image.
 */
final class PngFile {

  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final byte PALETTE = 3;
  private static final byte METRE = 1;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  private PngFile() {}

  /**
   * Writes it.
   *
   * @param pixelsPerMetre how dense the pixels are meant to be
   * @param texts by keyword, in English
   */
  static byte[] of(BufferedImage indexed, long pixelsPerMetre, Map<String, String> texts) {
    PngFile file = new PngFile();
    file.out.writeBytes(SIGNATURE);
    file.header(indexed.getWidth(), indexed.getHeight());
    file.density((int) pixelsPerMetre);
    file.palette((IndexColorModel) indexed.getColorModel());
    texts.forEach(file::text);
    file.chunk("IDAT", squeezed(lines(indexed)));
    file.chunk("IEND", new byte[0]);
    return file.out.toByteArray();
  }

  private void header(int width, int height) {
    // Eight bits a pixel, with a palette, and the only ways there are to compress and to filter.
    byte[] rest = {Byte.SIZE, PALETTE, 0, 0, 0};
    chunk("IHDR", ByteBuffer.allocate(13).putInt(width).putInt(height).put(rest).array());
  }

  private void density(int pixelsPerMetre) {
    chunk(
        "pHYs",
        ByteBuffer.allocate(9).putInt(pixelsPerMetre).putInt(pixelsPerMetre).put(METRE).array());
  }

  private void palette(IndexColorModel colours) {
    ByteBuffer palette = ByteBuffer.allocate(3 * colours.getMapSize());
    for (int i = 0; i < colours.getMapSize(); i++) {
      palette
          .put((byte) colours.getRed(i))
          .put((byte) colours.getGreen(i))
          .put((byte) colours.getBlue(i));
    }
    chunk("PLTE", palette.array());
  }

  /** A text, not compressed, whose keyword has no translation. */
  private void text(String keyword, String text) {
    chunk("iTXt", (keyword + "\0\0\0en\0\0" + text).getBytes(StandardCharsets.UTF_8));
  }

  /** The pixels, each line after a byte that says that it is not filtered. */
  private static byte[] lines(BufferedImage indexed) {
    byte[] pixels = ((DataBufferByte) indexed.getRaster().getDataBuffer()).getData();
    int width = indexed.getWidth();
    byte[] lines = new byte[pixels.length + indexed.getHeight()];
    for (int y = 0; y < indexed.getHeight(); y++) {
      System.arraycopy(pixels, y * width, lines, y * (width + 1) + 1, width);
    }
    return lines;
  }

  private static byte[] squeezed(byte[] bytes) {
    ByteArrayOutputStream squeezed = new ByteArrayOutputStream(bytes.length / 8);
    byte[] portion = new byte[1 << 14];
    try (Deflater deflater = new Deflater(Deflater.DEFAULT_COMPRESSION)) {
      deflater.setInput(bytes);
      deflater.finish();
      while (!deflater.finished()) {
        squeezed.write(portion, 0, deflater.deflate(portion));
      }
    }
    return squeezed.toByteArray();
  }

  private void chunk(String type, byte[] data) {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 check = new CRC32();
    check.update(name);
    check.update(data);
    out.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
    out.writeBytes(name);
    out.writeBytes(data);
    out.writeBytes(ByteBuffer.allocate(4).putInt((int) check.getValue()).array());
  }
}
