package dev.poleward.domain.programme;

import dev.poleward.domain.layout.PoleLine;
import dev.poleward.domain.programme.DocumentReading.Faulty;
import dev.poleward.domain.programme.DocumentReading.Sound;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Reads a programme's document: plain maps, lists, texts, numbers and truth values, as they come
 * from JSON. Gives the programme, or every fault at once; never throws, whatever the document is.
 * What a document leaves out takes the value that the contract states.
 */
public final class ProgrammeDocument {

  /** Faults of one document that are told. */
  public static final int FAULTS_MAX = 100;

  static final int VERSION_MAX = 100_000;
  static final int STAGES_MAX = 100;
  static final int NAME_CHARACTERS_MAX = 200;
  static final int DESCRIPTION_CHARACTERS_MAX = 2_000;

  static final String ABOVE_0_BELOW_1 = "above 0 and below 1";

  private final DocumentFaults faults = new DocumentFaults();
  private final Part document;

  private ProgrammeDocument(Map<?, ?> document) {
    this.document = new Part(document, "", faults);
  }

  /** Reads a document. */
  public static DocumentReading read(Map<String, Object> document) {
    return new ProgrammeDocument(document).read();
  }

  private DocumentReading read() {
    List.of("programme", "name", "stages").forEach(document::require);
    String id = document.id("programme");
    Integer version = document.whole("version", 1, VERSION_MAX);
    String name = document.text("name", NAME_CHARACTERS_MAX);
    String description = document.text("description", DESCRIPTION_CHARACTERS_MAX);
    double target = share("cleanTarget", Programme.CLEAN_TARGET_USUAL);
    double floor = share("cleanFloor", Programme.CLEAN_FLOOR_USUAL);
    if (!(floor < target)) {
      document.fault("cleanFloor", "must be below cleanTarget");
    }
    List<Part> parts = document.parts("stages", 1, STAGES_MAX);
    List<@Nullable Stage> stages = StageReading.inheriting(document).stages(parts);
    StageGraph.judge(parts);
    List<Stage> sound = new ArrayList<>();
    for (Stage stage : stages) {
      if (stage != null) {
        sound.add(stage);
      }
    }
    judgeSize(sound);
    if (!faults.isEmpty() || id == null || name == null) {
      return new Faulty(faults.all());
    }
    return new Sound(
        new Programme(id, version == null ? 1 : version, name, description, target, floor, sound));
  }

  private double share(String name, double usual) {
    Double share = document.number(name, value -> value > 0 && value < 1, ABOVE_0_BELOW_1);
    return share == null ? usual : share;
  }

  /** Counts without making the drills: who writes too many is not to be served by making them. */
  private void judgeSize(List<Stage> stages) {
    long drills = 0;
    for (Stage stage : stages) {
      List<Rung> rungs = stage.rungs();
      long asked = 0;
      for (Handling handling : stage.handlings()) {
        asked += rungs.stream().filter(handling::isAskedAt).count();
      }
      drills += asked * stage.runUps().size();
    }
    if (drills > Programme.DRILLS_MAX) {
      document.fault(
          "stages", "come to %d drills; at most %d".formatted(drills, Programme.DRILLS_MAX));
    }
  }

  /** The spacing that a part says, where it is one. */
  static @Nullable Double spacing(Part part) {
    return part.number("spacing", value -> value >= 0.3 && value <= 1.5, "from 0.3 to 1.5");
  }

  /** The line of poles that a part says, where it is one. */
  static @Nullable PoleLine line(Part part, double spacingInherited) {
    Integer poles = part.whole("poles", 2, 24);
    Double spacing = spacing(part);
    return poles == null ? null : new PoleLine(poles, spacing == null ? spacingInherited : spacing);
  }
}
