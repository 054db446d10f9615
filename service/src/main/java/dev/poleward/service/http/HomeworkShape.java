package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.outlook.Homework;
import dev.poleward.domain.outlook.Homework.Done;
import dev.poleward.service.codec.Writing;
import java.util.List;

/** Homework as the contract shows it. Immutable; safe for use by many threads. */
final class HomeworkShape {

  /** Most homework of one answer; what was set first is left out. */
  static final int HOMEWORK_MAX = 200;

  ObjectNode of(String dog, LocalDay day, List<Homework> homework) {
    List<Homework> shown = homework.stream().limit(HOMEWORK_MAX).toList();
    return new Writing()
        .put("dog", dog)
        .putPrinted("agedTo", day.date())
        .put("omitted", homework.size() - shown.size())
        .putObjects("homework", shown, HomeworkShape::homework)
        .done();
  }

  /** Homework and what was done of it, as the contract's {@code Homework}. */
  static ObjectNode homework(Homework homework) {
    return new Writing()
        .put("event", homework.set().id())
        .putPrinted("set", homework.set().time())
        .putPrinted("due", homework.set().event().due())
        .put("state", homework.state())
        .putObjects("drills", homework.drills(), HomeworkShape::done)
        .done();
  }

  private static ObjectNode done(Done done) {
    return new Writing()
        .put("drill", done.asked())
        .put("wanted", done.wanted())
        .put("reps", done.reps())
        .put("clean", done.clean())
        .put("done", done.isDone())
        .done();
  }
}
