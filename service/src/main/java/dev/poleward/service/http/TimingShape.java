package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.pace.Pace;
import dev.poleward.domain.pace.PaceOfKind;
import dev.poleward.domain.pace.PairedTimings;
import dev.poleward.domain.pace.PairedTimings.DeviceSeen;
import dev.poleward.domain.pace.Rhythm;
import dev.poleward.domain.pace.Slowing;
import dev.poleward.domain.pace.TimedRep.Told;
import dev.poleward.domain.pace.UsualValue;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.timing.DeviceClock;
import dev.poleward.domain.timing.MedianLimits;
import dev.poleward.domain.timing.TheilSen;
import dev.poleward.service.codec.Writing;
import org.jspecify.annotations.Nullable;

/** Times as they are shown. */
final class TimingShape {

  /** So many timings without a rep are shown, the last ones. */
  private static final int UNPAIRED_MAX = 100;

  private static final int DEVICES_MAX = 100;

  private static final double MILLIS_A_SECOND = 1_000;
  private static final double SECONDS_A_DAY = 86_400;

  private TimingShape() {}

  static ObjectNode of(String dog, LocalDay day, int days, PairedTimings timings, Pace pace) {
    int omitted = Math.max(0, timings.unpaired().size() - UNPAIRED_MAX);
    return new Writing()
        .put("dog", dog)
        .putPrinted("agedTo", day.date())
        .put("days", days)
        .put("paired", paired(timings))
        .put(
            "setAside",
            new Writing()
                .put("notClean", pace.notClean())
                .put("withoutPoles", pace.withoutPoles())
                .put("implausible", pace.implausible())
                .put("further", timings.further())
                .done())
        .putObjects("paces", pace.kinds(), TimingShape::kind)
        .put("slowing", slowing(pace.slowing()))
        .putObjects(
            "unpaired",
            timings.unpaired().subList(omitted, timings.unpaired().size()),
            TimingShape::unpaired)
        .put("unpairedOmitted", omitted)
        .put("unclaimed", timings.unclaimed())
        .putObjects(
            "devices", timings.devices().stream().limit(DEVICES_MAX).toList(), TimingShape::device)
        .done();
  }

  private static ObjectNode paired(PairedTimings timings) {
    Writing shape = new Writing().put("reps", timings.reps().size());
    for (Told told : Told.values()) {
      shape.put(
          switch (told) {
            case BY_WORD -> "byWord";
            case BY_DOG -> "byDog";
            case BY_SESSION -> "bySession";
          },
          timings.reps().stream().filter(rep -> rep.told() == told).count());
    }
    return shape.done();
  }

  private static ObjectNode kind(PaceOfKind pace) {
    return new Writing()
        .put("poles", pace.kind().poles())
        .put("entrySide", pace.kind().entrySide())
        .put("runs", pace.seconds().of())
        .put("days", pace.days().size())
        .put("seconds", usual(pace.seconds()).put("mad", pace.seconds().mad()).done())
        .put("gapsASecond", gapsASecond(pace))
        .put("trend", trend(pace.trend()))
        .put("rhythm", rhythm(pace.rhythm()))
        .done();
  }

  private static Writing usual(UsualValue value) {
    MedianLimits limits = value.limits();
    return new Writing()
        .put("median", value.median())
        .put("lower", limits == null ? null : limits.lower())
        .put("upper", limits == null ? null : limits.upper());
  }

  /** The shortest time is the fastest run. */
  private static ObjectNode gapsASecond(PaceOfKind pace) {
    int gaps = pace.kind().gaps();
    MedianLimits limits = pace.seconds().limits();
    return new Writing()
        .put("median", gaps / pace.seconds().median())
        .put("lower", limits == null ? null : gaps / limits.upper())
        .put("upper", limits == null ? null : gaps / limits.lower())
        .done();
  }

  private static @Nullable ObjectNode trend(@Nullable TheilSen trend) {
    return trend == null
        ? null
        : new Writing()
            .put("secondsAWeek", trend.slope())
            .put("lower", trend.lower())
            .put("upper", trend.upper())
            .put("chance", trend.trend().chanceTwoSided())
            .done();
  }

  private static @Nullable ObjectNode rhythm(@Nullable Rhythm rhythm) {
    return rhythm == null
        ? null
        : new Writing()
            .put("runs", rhythm.spread().of())
            .put("spread", usual(rhythm.spread()).done())
            .putObjects(
                "gaps",
                rhythm.gaps(),
                gap ->
                    new Writing()
                        .put("gap", gap.gap())
                        .put("share", usual(gap.share()).done())
                        .put("slow", gap.slow())
                        .done())
            .done();
  }

  private static ObjectNode slowing(Slowing slowing) {
    return new Writing()
        .put("verdict", slowing.verdict())
        .put("text", text(slowing.verdict()))
        .put("days", slowing.days())
        .put("daysBefore", slowing.daysBefore())
        .put("change", slowing.change())
        .put("chance", slowing.chance())
        .done();
  }

  /** What is found, in a sentence. */
  static String text(Slowing.Verdict verdict) {
    return switch (verdict) {
      case SLOWER ->
          "Slower lately than before: have the dog looked at before it is asked for more.";
      case NOT_SLOWER -> "Not surely slower lately than before.";
      case NOT_ENOUGH_DAYS ->
          "Times of %d days lately and of %d days before them are needed to tell."
              .formatted(Slowing.DAYS_MIN, Slowing.DAYS_BEFORE_MIN);
    };
  }

  private static ObjectNode unpaired(Fact<TimingRecorded> timing) {
    TimingRecorded told = timing.event();
    return new Writing()
        .put("timing", timing.id())
        .putPrinted("time", timing.time())
        .put("device", told.device())
        .put("session", told.session())
        .put("seconds", (told.exitAt() - told.entryAt()) / MILLIS_A_SECOND)
        .done();
  }

  private static ObjectNode device(DeviceSeen seen) {
    DeviceClock clock = seen.clock();
    return new Writing()
        .put("device", seen.device())
        .put("timings", seen.timings())
        .put("restarts", seen.restarts())
        .put(
            "clock",
            new Writing()
                .put("offset", Math.round(clock.zero()))
                .put("driftSecondsADay", clock.drift() * SECONDS_A_DAY)
                .put("readings", clock.readings())
                .put("usualDelay", clock.usualDelay() / MILLIS_A_SECOND)
                .done())
        .done();
  }
}
