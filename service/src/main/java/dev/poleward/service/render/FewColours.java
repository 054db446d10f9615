package dev.poleward.service.render;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.DataBufferInt;
import java.awt.image.IndexColorModel;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The same image with a palette of the 64 colours that are most of it; the others, which are at the
 * edges of letters, become the nearest of these. Half the bytes, and the eye sees no difference.
 */
final class FewColours {

  private static final int COLOURS = 64;

  private FewColours() {}

  static BufferedImage of(BufferedImage rgb) {
    int[] pixels = ((DataBufferInt) rgb.getRaster().getDataBuffer()).getData();
    Map<Integer, int[]> counts = counts(pixels);
    List<Integer> palette =
        counts.entrySet().stream()
            .sorted(
                Comparator.comparingInt((Map.Entry<Integer, int[]> each) -> each.getValue()[0])
                    .reversed()
                    .thenComparing(Map.Entry::getKey))
            .limit(COLOURS)
            .map(Map.Entry::getKey)
            .toList();
    BufferedImage indexed =
        new BufferedImage(
            rgb.getWidth(), rgb.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, model(palette));
    byte[] indices = ((DataBufferByte) indexed.getRaster().getDataBuffer()).getData();
    fill(indices, pixels, places(counts, palette));
    return indexed;
  }

  private static Map<Integer, int[]> counts(int[] pixels) {
    Map<Integer, int[]> counts = new HashMap<>();
    int last = -1;
    int[] count = new int[1];
    for (int pixel : pixels) {
      int colour = pixel & 0xFFFFFF;
      if (colour != last) {
        count = counts.computeIfAbsent(colour, _ -> new int[1]);
        last = colour;
      }
      count[0]++;
    }
    return counts;
  }

  private static IndexColorModel model(List<Integer> palette) {
    byte[] red = new byte[palette.size()];
    byte[] green = new byte[palette.size()];
    byte[] blue = new byte[palette.size()];
    for (int i = 0; i < palette.size(); i++) {
      red[i] = (byte) (palette.get(i) >> 16);
      green[i] = (byte) (palette.get(i) >> 8);
      blue[i] = (byte) (int) palette.get(i);
    }
    return new IndexColorModel(Byte.SIZE, palette.size(), red, green, blue);
  }

  /** Where each colour is in the palette, or the one that is nearest to it. */
  private static Map<Integer, Byte> places(Map<Integer, int[]> counts, List<Integer> palette) {
    Map<Integer, Byte> places = new HashMap<>();
    for (int i = 0; i < palette.size(); i++) {
      places.put(palette.get(i), (byte) i);
    }
    for (int colour : counts.keySet()) {
      if (!places.containsKey(colour)) {
        places.put(colour, nearest(colour, palette));
      }
    }
    return places;
  }

  private static byte nearest(int colour, List<Integer> palette) {
    int best = 0;
    int least = Integer.MAX_VALUE;
    for (int i = 0; i < palette.size(); i++) {
      int distance = distance(colour, palette.get(i));
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

  private static void fill(byte[] indices, int[] pixels, Map<Integer, Byte> places) {
    int last = -1;
    byte place = 0;
    for (int i = 0; i < pixels.length; i++) {
      int colour = pixels[i] & 0xFFFFFF;
      if (colour != last) {
        place = places.getOrDefault(colour, (byte) 0);
        last = colour;
      }
      indices[i] = place;
    }
  }
}
