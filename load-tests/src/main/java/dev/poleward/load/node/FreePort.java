package dev.poleward.load.node;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;

/** Ports that nobody uses just now. */
public final class FreePort {

  private FreePort() {}

  /** A port of the loopback address. */
  public static int find() {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    } catch (IOException e) {
      throw new UncheckedIOException("no free port", e);
    }
  }
}
