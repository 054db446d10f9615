package dev.poleward.service.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A request that Javalin took. For one thread. */
record JavalinRequest(Context context) implements Request {

  @Override
  public String path() {
    return context.path();
  }

  @Override
  public @Nullable String query() {
    return context.queryString();
  }

  @Override
  public Map<String, String> inPath() {
    return context.pathParamMap();
  }

  @Override
  public Map<String, List<String>> parameters() {
    return context.queryParamMap();
  }

  @Override
  public @Nullable String header(String name) {
    return context.header(name);
  }

  @Override
  public Map<String, String> headers() {
    return context.headerMap();
  }

  @Override
  public long bodyBytes() {
    return context.req().getContentLengthLong();
  }

  @Override
  public InputStream body() throws IOException {
    return context.req().getInputStream();
  }
}
