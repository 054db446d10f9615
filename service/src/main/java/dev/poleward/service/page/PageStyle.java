package dev.poleward.service.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** How pages look. */
final class PageStyle {

  private PageStyle() {}

  static String read(String name) {
    try (InputStream in = PageStyle.class.getResourceAsStream("/pages/" + name)) {
      if (in == null) {
        throw new IllegalStateException("not on the classpath: pages/" + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot be read: pages/" + name, e);
    }
  }
}
