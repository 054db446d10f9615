package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.layout.Layout;
import dev.poleward.domain.layout.LayoutQuestion;
import dev.poleward.service.codec.Writing;
import java.util.List;

/** A field pack as the contract shows it. */
final class FieldPackShape {

  private FieldPackShape() {}

  static ObjectNode of(FieldPack pack) {
    return new Writing()
        .put("class", pack.group())
        .put("name", pack.name())
        .putPrinted("date", pack.date())
        .putObjects("dogs", pack.present().dogs(), dog -> dog(pack, dog))
        .put(
            "order",
            new RunningShape(pack.asked(), pack.present(), pack.order(), pack.zone())
                .of(pack.group()))
        .putObjects(
            "layouts", pack.setups(), setup -> LayoutShape.of(Layout.of(LayoutQuestion.of(setup))))
        .putObjects(
            "turning",
            List.copyOf(pack.turning().entrySet()),
            each ->
                LayoutShape.turning(
                    new Writing()
                        .put("poles", each.getKey().poles())
                        .put("spacing", each.getKey().spacing()),
                    each.getKey(),
                    each.getValue()))
        .done();
  }

  private static ObjectNode dog(FieldPack pack, DogToRun dog) {
    return new Writing()
        .put("dog", dog.dog())
        .put("callName", dog.callName())
        .put("plan", PlanOrder.of(pack.plan(dog)))
        .done();
  }
}
