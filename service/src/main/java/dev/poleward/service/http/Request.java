package dev.poleward.service.http;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A request as it came over the wire, as much of it as {@link Call} asks for. For one thread. */
interface Request {

  /** The path, without the query. */
  String path();

  /** The query as sent; null when there is none. */
  @Nullable String query();

  /** What the path has in the places that the route left open, by name. */
  Map<String, String> inPath();

  /** Query parameters, each with all its values. */
  Map<String, List<String>> parameters();

  /** A header, whichever way its name is written; null when there is none. */
  @Nullable String header(String name);

  /** All headers. */
  Map<String, String> headers();

  /** How long the body is said to be, in bytes; negative when nothing is said. */
  long bodyBytes();

  /** The body as it comes. */
  InputStream body() throws IOException;
}
