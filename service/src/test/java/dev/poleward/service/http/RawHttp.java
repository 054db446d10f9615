package dev.poleward.service.http;

import dev.poleward.service.Club;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Requests byte by byte, for what no client library would send.
 *
 * @param headers by name, in lower case
 */
@SuppressWarnings("ArrayRecordComponent") // read once, never compared
record RawHttp(int status, Map<String, List<String>> headers, byte[] body) {

  private static final int QUIET_MILLIS_MAX = 30_000;

  /** Sends all that and reads one answer. */
  static RawHttp exchange(int port, byte[] request) {
    try (Socket socket = new Socket("127.0.0.1", port)) {
      socket.setSoTimeout(QUIET_MILLIS_MAX);
      OutputStream out = socket.getOutputStream();
      out.write(request);
      out.flush();
      return read(socket.getInputStream());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static RawHttp exchange(int port, String request) {
    return exchange(port, request.getBytes(StandardCharsets.ISO_8859_1));
  }

  /** Sends a body as it is to the door for events, and holds the answer to the contract. */
  static RawHttp post(Club club, String type, byte[] body) {
    return post(club, type, "Content-Length: " + body.length, body);
  }

  /** The same in chunks of one size, with no word of how long it is. */
  static RawHttp postInChunks(Club club, String type, byte[] body, int chunk) {
    ByteArrayOutputStream chunked = new ByteArrayOutputStream();
    for (int at = 0; at < body.length; at += chunk) {
      int size = Math.min(chunk, body.length - at);
      chunked.writeBytes(ascii(Integer.toHexString(size) + "\r\n"));
      chunked.write(body, at, size);
      chunked.writeBytes(ascii("\r\n"));
    }
    chunked.writeBytes(ascii("0\r\n\r\n"));
    return post(club, type, "Transfer-Encoding: chunked", chunked.toByteArray());
  }

  private static RawHttp post(Club club, String type, String framing, byte[] framed) {
    ByteArrayOutputStream request = new ByteArrayOutputStream();
    request.writeBytes(
        ascii(
            """
            POST %s HTTP/1.1
            Host: localhost
            Authorization: Bearer %s
            Content-Type: %s
            %s

            """
                .formatted(club.path("/events"), club.accessKey(), type, framing)
                .replace("\n", "\r\n")));
    request.writeBytes(framed);
    RawHttp answer = exchange(club.service().port(), request.toByteArray());
    ContractFilter.check(
        "POST", club.path("/events"), answer.status(), answer.headers(), answer.body());
    return answer;
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static RawHttp read(InputStream in) throws IOException {
    String head = head(in);
    List<String> lines = List.of(head.split("\r\n", -1));
    Map<String, List<String>> headers = new TreeMap<>();
    for (String line : lines.subList(1, lines.size())) {
      int colon = line.indexOf(':');
      headers
          .computeIfAbsent(
              line.substring(0, colon).toLowerCase(Locale.ROOT), _ -> new ArrayList<>())
          .add(line.substring(colon + 1).strip());
    }
    int status = Integer.parseInt(lines.getFirst().split(" ", -1)[1]);
    int length = Integer.parseInt(headers.getOrDefault("content-length", List.of("0")).getFirst());
    return new RawHttp(status, headers, in.readNBytes(length));
  }

  private static String head(InputStream in) throws IOException {
    StringBuilder head = new StringBuilder();
    while (head.indexOf("\r\n\r\n") < 0) {
      int each = in.read();
      if (each < 0) {
        throw new IOException("hung up after: " + head);
      }
      head.append((char) each);
    }
    return head.substring(0, head.length() - 4);
  }

  String header(String name) {
    return headers.getOrDefault(name, List.of("")).getFirst();
  }

  String text() {
    return new String(body, StandardCharsets.UTF_8);
  }
}
