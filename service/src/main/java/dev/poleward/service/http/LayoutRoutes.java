package dev.poleward.service.http;

import dev.poleward.domain.layout.Layout;
import dev.poleward.service.render.CsvTable;
import dev.poleward.service.render.LayoutPicture;
import dev.poleward.service.render.Picture;
import dev.poleward.service.render.Studio;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Setups on the ground. It needs no club, and keeps nothing. Safe for use by many threads. */
final class LayoutRoutes {

  /** What a layout comes as, the usual form first. */
  static final List<String> FORMS = List.of(Answer.JSON, CsvTable.CSV, Pictures.SVG, Pictures.PNG);

  private final Gate gate;
  private final Bodies bodies;
  private final Pictures pictures;

  LayoutRoutes(Gate gate, Bodies bodies, Studio studio) {
    this.gate = gate;
    this.bodies = bodies;
    this.pictures = new Pictures(studio);
  }

  /** {@code POST /v1/layouts}. */
  Answer post(Call call) {
    return gate.anybody(
        call,
        _ -> {
          Parameters parameters = new Parameters(call, Set.of("width"));
          int width = Pictures.width(parameters);
          Optional<Problem> problem = parameters.problem();
          return problem.isPresent()
              ? call.refused(problem.get())
              : bodies.judged(
                  call,
                  "AskForLayout",
                  body -> shown(call, Layout.of(LayoutAsked.of(body)), width));
        });
  }

  private Answer shown(Call call, Layout layout, int width) {
    return switch (call.form()) {
      case CsvTable.CSV -> Answer.text(CsvTable.CSV + "; charset=utf-8", TapeTable.of(layout));
      case Pictures.SVG, Pictures.PNG -> {
        Picture picture = LayoutPicture.of(layout, width);
        yield pictures.painted(call, picture);
      }
      default -> Answer.json(200, LayoutShape.of(layout));
    };
  }
}
