package dev.poleward.service.http;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;

/**
 * Where the service listens.
 *
 * @param host address to bind
 * @param port 0 for any free one
 */
public record HttpSettings(String host, int port, Encryption encryption) {

  /** Who encrypts what goes over the wire. Access keys must not travel in the open. */
  public sealed interface Encryption {

    /** Nobody: for loopback alone. */
    record None() implements Encryption {}

    /** A proxy in front of the service. */
    record Elsewhere() implements Encryption {}

    /**
     * The service itself.
     *
     * @param keyStore PKCS #12 file with the certificate and its key
     * @param password of the file
     */
    record Here(Path keyStore, String password) implements Encryption {

      /** Keeps the password out of logs. */
      @Override
      public String toString() {
        return "Here[" + keyStore + "]";
      }
    }
  }

  /** Refuses ports that are none, and plain HTTP for other machines. */
  public HttpSettings {
    if (port < 0 || port > 65_535) {
      throw new IllegalArgumentException(port + " is not a port");
    }
    if (encryption instanceof Encryption.None && !isLoopback(host)) {
      throw new IllegalArgumentException(host + " is not loopback and needs TLS");
    }
  }

  /** Whether only this machine can reach an address. */
  public static boolean isLoopback(String host) {
    try {
      return InetAddress.getByName(host).isLoopbackAddress();
    } catch (UnknownHostException e) {
      return false;
    }
  }
}
