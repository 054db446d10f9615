package dev.poleward.service.render;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.DataBufferInt;
import java.awt.image.IndexColorModel;
import java.util.Arrays;

/**
 * The same image with a palette of the 64 colours that are most of it; the others, which are at the
 * edges of letters, become the nearest of these. Half the bytes, and the eye sees no difference.
 */
final class FewColours {

  private static final int COLOURS = 64;
  private static final int COLOUR_BITS = 24;
  private static final int COLOUR = (1 << COLOUR_BITS) - 1;

  private FewColours() {}

  static BufferedImage of(BufferedImage rgb) {
    int[] pixels = ((DataBufferInt) rgb.getRaster().getDataBuffer()).getData();
    long[] counted = counted(runs(pixels));
    int[] palette = palette(counted);
    BufferedImage indexed =
        new BufferedImage(
            rgb.getWidth(), rgb.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, model(palette));
    byte[] indices = ((DataBufferByte) indexed.getRaster().getDataBuffer()).getData();
    fill(indices, pixels, counted, palette);
    return indexed;
  }

  /** Pixels of one colour in a row: the colour above, how many below. */
  private static long[] runs(int[] pixels) {
    long[] runs = new long[pixels.length];
    int size = 0;
    for (int from = 0, to; from < pixels.length; from = to) {
      int colour = pixels[from] & COLOUR;
      to = from + 1;
      while (to < pixels.length && (pixels[to] & COLOUR) == colour) {
        to++;
      }
      runs[size++] = (long) colour << Integer.SIZE | (to - from);
    }
    return Arrays.copyOf(runs, size);
  }

  /** Each colour once, in ascending order, with the sum of its runs. */
  private static long[] counted(long[] runs) {
    Arrays.sort(runs);
    int size = 0;
    for (long run : runs) {
      if (size > 0 && colour(runs[size - 1]) == colour(run)) {
        runs[size - 1] += (int) run;
      } else {
        runs[size++] = run;
      }
    }
    return Arrays.copyOf(runs, size);
  }

  private static int colour(long counted) {
    return (int) (counted >>> Integer.SIZE);
  }

  /** The most frequent colours, of equally frequent ones the lesser number first. */
  private static int[] palette(long[] counted) {
    return Arrays.stream(counted)
        .map(each -> (long) -(int) each << COLOUR_BITS | colour(each))
        .sorted()
        .limit(COLOURS)
        .mapToInt(each -> (int) each & COLOUR)
        .toArray();
  }

  private static IndexColorModel model(int[] palette) {
    byte[] red = new byte[palette.length];
    byte[] green = new byte[palette.length];
    byte[] blue = new byte[palette.length];
    for (int i = 0; i < palette.length; i++) {
      red[i] = (byte) (palette[i] >> 16);
      green[i] = (byte) (palette[i] >> 8);
      blue[i] = (byte) palette[i];
    }
    return new IndexColorModel(Byte.SIZE, palette.length, red, green, blue);
  }

  private static byte nearest(int colour, int[] palette) {
    int best = 0;
    int least = Integer.MAX_VALUE;
    for (int i = 0; i < palette.length; i++) {
      int distance = distance(colour, palette[i]);
      if (distance < least) {
        least = distance;
        best = i;
      }
    }
    return (byte) best;
  }

  private static int distance(int one, int other) {
    int red = (one >> 16 & 0xFF) - (other >> 16 & 0xFF);
    int green = (one >> 8 & 0xFF) - (other >> 8 & 0xFF);
    int blue = (one & 0xFF) - (other & 0xFF);
    return red * red + green * green + blue * blue;
  }

  private static void fill(byte[] indices, int[] pixels, long[] counted, int[] palette) {
    int[] colours = Arrays.stream(counted).mapToInt(FewColours::colour).toArray();
    byte[] places = new byte[colours.length];
    for (int i = 0; i < places.length; i++) {
      places[i] = nearest(colours[i], palette);
    }
    int last = -1;
    byte place = 0;
    for (int i = 0; i < pixels.length; i++) {
      int colour = pixels[i] & COLOUR;
      if (colour != last) {
        place = places[Arrays.binarySearch(colours, colour)];
        last = colour;
      }
      indices[i] = place;
    }
  }
}
