package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.service.http.ClubReads.Reader;
import dev.poleward.service.render.CsvTable;
import java.util.List;

/** Pages of placed reps, as JSON or as a table. Immutable; safe for use by many threads. */
final class RepList {

  static final List<String> FORMS = List.of(Answer.JSON, CsvTable.CSV);

  private final RepShape shape;

  RepList(RepShape shape) {
    this.shape = shape;
  }

  /**
   * The page that is asked for.
   *
   * @param reps all that the reader may see, ascending by (time, id)
   */
  Answer page(Call call, Reader reader, List<PlacedRep> reps, Asked.ByMoment asked) {
    Page<PlacedRep> page = Page.of(reps, PlacedRep::moment, asked);
    List<ObjectNode> shown =
        page.items().stream().map(rep -> shape.of(reader.personal(), rep)).toList();
    return page.linked(call, inForm(call.form(), shown));
  }

  private static Answer inForm(String form, List<ObjectNode> reps) {
    if (form.equals(CsvTable.CSV)) {
      return Answer.text(CsvTable.CSV + "; charset=utf-8", RepTable.of(reps));
    }
    ObjectNode body = JsonNodeFactory.instance.objectNode();
    ArrayNode items = body.putArray("reps");
    reps.forEach(items::add);
    return Answer.json(200, body);
  }
}
