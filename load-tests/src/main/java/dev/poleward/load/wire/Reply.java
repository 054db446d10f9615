package dev.poleward.load.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An answer of the service. */
public final class Reply {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Pattern NEXT = Pattern.compile("<([^>]*)>; *rel=\"next\"");

  private final int status;
  private final Map<String, String> headers;
  private final byte[] body;

  Reply(int status, Map<String, String> headers, byte[] body) {
    this.status = status;
    this.headers = headers;
    this.body = body;
  }

  public int status() {
    return status;
  }

  /** Whether the service did what it was asked for. */
  public boolean isOk() {
    return status >= 200 && status < 300;
  }

  /** This answer, when the service did what it was asked for. */
  public Reply orThrow() {
    if (!isOk()) {
      throw new IllegalStateException("refused: " + this);
    }
    return this;
  }

  /** Number of bytes in the body. */
  public int length() {
    return body.length;
  }

  public String text() {
    return new String(body, StandardCharsets.UTF_8);
  }

  /** The body, which is JSON. */
  public JsonNode json() {
    try {
      return JSON.readTree(body);
    } catch (IOException e) {
      throw new UncheckedIOException("no JSON: " + this, e);
    }
  }

  /** A header, by its name in lower case. */
  public Optional<String> header(String name) {
    return Optional.ofNullable(headers.get(name));
  }

  /** Where the next page is. */
  public Optional<String> next() {
    return header("link").map(NEXT::matcher).filter(Matcher::find).map(found -> found.group(1));
  }

  @Override
  public String toString() {
    String text = text();
    return status + " " + (text.length() > 500 ? text.substring(0, 500) + "…" : text);
  }
}
