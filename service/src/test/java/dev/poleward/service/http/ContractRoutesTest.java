package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import dev.poleward.service.Club;
import dev.poleward.service.RunningService;
import dev.poleward.service.SharedService;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The contract and the service name the same routes, and the contract is held to. */
@ExtendWith(SharedService.class)
class ContractRoutesTest {

  private static final Map<String, List<String>> JSON =
      Map.of("Content-Type", List.of("application/json"));

  @Test
  void contractAndServiceKnowTheSameRoutes(RunningService service) throws IOException {
    String contract = service.stranger().get("/openapi.yaml").asString();

    assertThat(new TreeSet<>(service.routes())).isEqualTo(operations(contract));
  }

  private static Set<String> operations(String contract) throws IOException {
    Set<String> operations = new TreeSet<>();
    JsonNode paths = new YAMLMapper().readTree(contract).path("paths");
    for (Map.Entry<String, JsonNode> path : paths.properties()) {
      for (Map.Entry<String, JsonNode> member : path.getValue().properties()) {
        if (!member.getKey().equals("parameters")) {
          operations.add(member.getKey().toUpperCase(Locale.ROOT) + " " + path.getKey());
        }
      }
    }
    return operations;
  }

  @Test
  void whatIsServedIsWhatIsBuilt(RunningService service) {
    assertThat(service.stranger().get("/openapi.yaml").asString()).startsWith("openapi: 3.1.0");
    assertThat(service.stranger().get("/asyncapi.yaml").asString()).startsWith("asyncapi: 3");
  }

  @Test
  void anAnswerThatKeepsToTheContractPasses(Club club) {
    assertThat(club.get("/digest").statusCode()).isEqualTo(200);
  }

  @Test
  void aMissingMemberIsCaught() {
    assertThatThrownBy(() -> check(200, JSON, "{\"events\":3}")).hasMessageContaining("digest");
  }

  @Test
  void aWrongKindIsCaught() {
    assertThatThrownBy(() -> check(200, JSON, "{\"events\":\"3\",\"digest\":\"sha256:1\"}"))
        .hasMessageContaining("events");
  }

  @Test
  void anUndeclaredStatusIsCaught() {
    assertThatThrownBy(() -> check(418, JSON, "{}")).hasMessageContaining("418");
  }

  @Test
  void anUndeclaredFormIsCaught() {
    assertThatThrownBy(() -> check(200, Map.of("Content-Type", List.of("text/html")), "<p>"))
        .hasMessageContaining("text/html");
  }

  @Test
  void aRefusalThatIsNoProblemDocumentIsCaught() {
    assertThatThrownBy(() -> check(403, JSON, "{\"title\":\"no\"}"))
        .isInstanceOf(AssertionError.class);
  }

  private static void check(int status, Map<String, List<String>> headers, String body) {
    ContractFilter.check(
        "GET", "/v1/clubs/c/digest", status, headers, body.getBytes(StandardCharsets.UTF_8));
  }
}
