package dev.poleward.service.contract;

import static dev.poleward.service.contract.Events.tree;
import static dev.poleward.service.contract.PlainContract.PLAIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.DocumentReading.Faulty;
import dev.poleward.domain.programme.DocumentReading.Sound;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.ProgrammeDocument;
import dev.poleward.domain.programme.Stage;
import dev.poleward.service.codec.Documents;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the page on writing a programme says of its example and of the default programme. */
class DocumentedProgrammeTest {

  private static final Path PAGE = Path.of("..", "docs", "programmes.md");
  private static final String FENCE = "```";

  private static String page() throws IOException {
    return Files.readString(PAGE);
  }

  private static JsonNode example() throws IOException {
    return tree(page().split(FENCE + "json\n", -1)[1].split(FENCE, -1)[0]);
  }

  private static Programme read(JsonNode document) {
    return switch (ProgrammeDocument.read(Documents.read((ObjectNode) document))) {
      case Sound(Programme programme) -> programme;
      case Faulty faulty -> fail(faulty.faults().toString());
    };
  }

  private static List<String> sizes(Programme programme) {
    return programme.stages().stream()
        .map(
            stage ->
                "%s %d %d %d"
                    .formatted(
                        stage.id(),
                        stage.rungs().size(),
                        stage.drills().size(),
                        stage.pools().size()))
        .toList();
  }

  @Test
  void theExampleIsInOrderAndComesToWhatThePageSays() throws IOException {
    assertThat(PLAIN.accepts("ProgrammePublishedV1", example())).isTrue();
    assertThat(sizes(read(example())))
        .containsExactly("bare 5 13 5", "tunnel 11 22 11", "six 1 1 1");
  }

  @Test
  void theDefaultProgrammeComesToWhatThePageSays() throws IOException {
    String page = page();
    Programme programme = DefaultProgramme.programme();

    for (Stage stage : programme.stages().subList(0, 6)) {
      assertThat(page.lines().filter(line -> line.startsWith("| `%s` |".formatted(stage.id()))))
          .singleElement()
          .asString()
          .endsWith(
              "| %d | %d | %d |"
                  .formatted(stage.rungs().size(), stage.drills().size(), stage.pools().size()));
    }
    int verdicts = programme.stages().stream().mapToInt(stage -> stage.pools().size()).sum();
    assertThat(page)
        .contains("%d drills and %d verdicts".formatted(programme.drills().size(), verdicts));
  }
}
