package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.ClassEvent.ClassFormed;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.report.ClassGlance;
import dev.poleward.domain.report.DogGlance;
import dev.poleward.domain.report.Overview;
import dev.poleward.domain.report.StageCount;
import dev.poleward.service.codec.Writing;
import java.util.function.Predicate;

/** The club at a glance as the contract shows it. Immutable; safe for use by many threads. */
final class OverviewShape {

  ObjectNode of(Overview overview, LocalDay day, int untrainedDays) {
    return new Writing()
        .putPrinted("agedTo", day.date())
        .put("untrainedDays", untrainedDays)
        .put("totals", totals(overview, untrainedDays))
        .putObjects("stages", overview.stages(), OverviewShape::stage)
        .putObjects("dogs", overview.dogs(), dog -> dog(dog, untrainedDays))
        .putObjects("guests", overview.guests(), dog -> dog(dog, untrainedDays))
        .putObjects("classes", overview.classes(), OverviewShape::group)
        .put("moreClasses", overview.moreClasses())
        .done();
  }

  private static ObjectNode totals(Overview overview, int untrainedDays) {
    return new Writing()
        .put("dogs", overview.dogs().size())
        .put("guests", overview.guests().size())
        .put("slipping", count(overview, dog -> dog.slipping() > 0))
        .put("due", count(overview, dog -> dog.due() > 0))
        .put("resting", count(overview, DogGlance::isResting))
        .put("suspended", count(overview, dog -> !dog.angleWork()))
        .put("untrained", count(overview, dog -> dog.isUntrained(untrainedDays)))
        .put("overLoad", count(overview, DogGlance::isOverLoad))
        .done();
  }

  private static int count(Overview overview, Predicate<DogGlance> which) {
    return (int) overview.dogs().stream().filter(which).count();
  }

  private static ObjectNode stage(StageCount count) {
    return new Writing()
        .put("programme", count.programme().id())
        .put("programmeName", count.programme().name())
        .put("stage", count.stage().map(Stage::id).orElse(null))
        .put("name", count.stage().map(Stage::name).orElse(null))
        .put("finished", count.stage().isEmpty())
        .putTexts("dogs", count.dogs())
        .done();
  }

  private static ObjectNode dog(DogGlance dog, int untrainedDays) {
    return new Writing()
        .put("dog", dog.dog())
        .put("callName", dog.known().callName())
        .put("programme", dog.programme().id())
        .put("stage", dog.stage().map(Stage::id).orElse(null))
        .put("rungs", dog.stage().map(stage -> stage.pools().size()).orElse(null))
        .put("behind", dog.stage().map(_ -> dog.behind()).orElse(null))
        .put("finished", dog.stage().isEmpty())
        .put("slipping", dog.slipping())
        .put("due", dog.due())
        .put("resting", dog.isResting())
        .put("suspended", !dog.angleWork())
        .putPrinted("lastTrained", dog.lastTrained())
        .put("daysSince", dog.daysSince())
        .put("untrained", dog.isUntrained(untrainedDays))
        .put("reps", dog.reps())
        .put("week", CareShape.load(dog.week()))
        .put("gapsLimit", dog.limits().gapsPerWeek())
        .put("overLoad", dog.isOverLoad())
        .put("age", dog.limits().age())
        .done();
  }

  private static ObjectNode group(ClassGlance group) {
    ClassFormed formed = group.formed().standing().event();
    return new Writing()
        .put("class", formed.group())
        .put("name", formed.name())
        .put("instructor", formed.instructor())
        .put("members", group.members())
        .done();
  }
}
