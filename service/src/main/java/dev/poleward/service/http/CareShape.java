package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.care.CareLimits;
import dev.poleward.domain.care.CarePermit;
import dev.poleward.domain.care.Load;
import dev.poleward.service.codec.Writing;

/** What a dog may be asked for, as it is shown. */
final class CareShape {

  private CareShape() {}

  static ObjectNode of(String dog, LocalDay day, CareLimits limits, CarePermit permit) {
    return new Writing()
        .put("dog", dog)
        .putPrinted("agedTo", day.date())
        .put("mayTrain", permit.mayTrain())
        .put("angleWork", permit.mayTrain() && permit.angleWork())
        .put("poles", permit.polesMax())
        .put("gaps", permit.gapsMax())
        .put("sharpBends", permit.sharpBendsMax())
        .put("barHeight", permit.barHeightMax())
        .put(
            "load",
            new Writing()
                .put("today", load(permit.load().today()))
                .put("week", load(permit.load().week()))
                .put("fourWeeksBefore", load(permit.load().before()))
                .done())
        .put("heat", permit.heat() == null ? null : Thousandths.of(permit.heat()))
        .put("limits", limits(limits))
        .putObjects("notes", permit.notes(), PlanShape::note)
        .done();
  }

  /** What reps asked of a body. */
  static ObjectNode load(Load load) {
    return new Writing()
        .put("gaps", load.gaps())
        .put("sharpBends", load.sharpBends())
        .put("sessions", load.sessions())
        .put("poles", load.poles())
        .done();
  }

  private static ObjectNode limits(CareLimits limits) {
    return new Writing()
        .put("ageMonths", limits.ageMonths())
        .put("poles", limits.poles())
        .put("gapsPerSession", limits.gapsPerSession())
        .put("gapsPerWeek", limits.gapsPerWeek())
        .put("growthPercent", limits.growthPercent())
        .put("sharpBendsPerSession", limits.sharpBendsPerSession())
        .put("polesYoung", limits.polesYoung())
        .put("gapsYoung", limits.gapsYoung())
        .put("barHeightYoung", limits.barHeightYoung())
        .put("easeBackDays", limits.easeBackDays())
        .put("breakDays", limits.breakDays())
        .put("heatCaution", limits.heatCaution())
        .put("heatStop", limits.heatStop())
        .done();
  }
}
