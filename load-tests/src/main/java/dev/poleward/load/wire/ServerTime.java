package dev.poleward.load.wire;

import java.io.IOException;
import java.time.Duration;

/**
 * Time that the service itself says it took for the requests of one route, out of {@code /metrics}.
 *
 * @param requests how many since its start
 * @param seconds all of them together
 */
public record ServerTime(double requests, double seconds) {

  private static final Duration ANSWER_MAX = Duration.ofSeconds(10);

  /** As it is now; route as the contract names it. */
  public static ServerTime now(int port, String route) throws IOException {
    double requests = 0;
    double seconds = 0;
    try (Connection connection = Connection.open(port, ANSWER_MAX)) {
      for (String line : connection.get("/metrics", "").orThrow().text().split("\n", -1)) {
        if (line.contains("route=\"" + route + "\"")) {
          double value = Double.parseDouble(line.substring(line.lastIndexOf(' ') + 1));
          if (line.startsWith("http_server_requests_seconds_count")) {
            requests += value;
          } else if (line.startsWith("http_server_requests_seconds_sum")) {
            seconds += value;
          }
        }
      }
    }
    return new ServerTime(requests, seconds);
  }

  /** Mean time of a request since an earlier look, in milliseconds. */
  public double meanMillisSince(ServerTime before) {
    return (seconds - before.seconds) / (requests - before.requests) * 1_000;
  }
}
