package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.ClassEvent.ClassFormed;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.report.Attendance;
import dev.poleward.domain.report.ClassPage;
import dev.poleward.domain.report.ClassReport;
import dev.poleward.domain.report.ClassSession;
import dev.poleward.domain.report.EquipmentUse;
import dev.poleward.domain.report.NotKnown;
import dev.poleward.domain.report.Presence;
import dev.poleward.domain.report.RepTally;
import dev.poleward.domain.report.StuckOn;
import dev.poleward.service.codec.SetupCodec;
import dev.poleward.service.codec.Writing;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The report of a class as the contract shows it. Immutable; safe for use by many threads. */
final class ClassReportShape {

  /** Most sessions of one answer; those that came last are left out. */
  static final int SESSIONS_MAX = 500;

  /** Most rungs that dogs are stuck on. */
  static final int STUCK_ON_MAX = 20;

  /** Most setups; those that stood longest are shown. */
  static final int SETUPS_MAX = 20;

  /** Most members of a session. */
  static final int MEMBERS_MAX = 1_000;

  /** Most visitors of a session. */
  static final int VISITORS_MAX = 100;

  private final DogPageShape dogs = new DogPageShape();

  ObjectNode of(ClassReport report) {
    ClassFormed formed = report.formed().standing().event();
    return new Writing()
        .put("class", formed.group())
        .put("name", formed.name())
        .put("instructor", formed.instructor())
        .put("schedule", formed.schedule())
        .putPrinted("from", report.span().from())
        .putPrinted("to", report.span().to())
        .put("narrowed", report.page().isEmpty())
        .put("page", report.page().map(ClassReportShape::page).orElse(null))
        .put("omitted", report.omitted())
        .putObjects("dogs", report.dogs(), dogs::of)
        .done();
  }

  private static ObjectNode page(ClassPage page) {
    List<ClassSession> sessions = first(page.sessions(), SESSIONS_MAX);
    List<StuckOn> stuckOn = first(page.stuckOn(), STUCK_ON_MAX);
    return new Writing()
        .putObjects("sessions", sessions, ClassReportShape::session)
        .put("sessionsOmitted", page.sessions().size() - sessions.size())
        .put("reps", tally(page.reps()))
        .put("membersReps", tally(page.membersReps()))
        .putObjects("stuckOn", stuckOn, ClassReportShape::stuckOn)
        .put("stuckOnOmitted", page.stuckOn().size() - stuckOn.size())
        .put("equipment", equipment(page.equipment()))
        .putObjects("notKnown", page.notKnown(), each -> notKnown(each, ReportWords.ofClass(each)))
        .done();
  }

  private static ObjectNode session(ClassSession session) {
    return new Writing()
        .put("session", session.session())
        .putPrinted("opened", session.opened())
        .putPrinted("day", session.day())
        .put("present", session.count(Presence.PRESENT))
        .put("absent", session.count(Presence.ABSENT))
        .put("unknown", session.count(Presence.UNKNOWN))
        .putObjects("members", first(session.members(), MEMBERS_MAX), ClassReportShape::attendance)
        .putObjects(
            "visitors", first(session.visitors(), VISITORS_MAX), ClassReportShape::attendance)
        .put("reps", tally(RepTally.of(session.reps())))
        .put("setUp", session.setups().size())
        .put("changes", session.changes())
        .done();
  }

  private static ObjectNode attendance(Attendance attendance) {
    return presence(new Writing().put("dog", attendance.dog()), attendance).done();
  }

  /** Adds whether a dog was there. */
  static Writing presence(Writing shape, Attendance attendance) {
    return shape
        .put("presence", attendance.presence())
        .put("noted", attendance.noted())
        .put("reps", attendance.reps());
  }

  private static ObjectNode stuckOn(StuckOn on) {
    return StandingShape.place(on.stage().id(), on.pool())
        .put("programme", on.programme())
        .put("name", on.stage().name())
        .putTexts("dogs", on.stuck())
        .put("worked", on.worked())
        .put("text", ReportWords.stuckOn(on))
        .done();
  }

  private static ObjectNode equipment(EquipmentUse use) {
    List<EquipmentUse.OfSetup> setups = first(use.setups(), SETUPS_MAX);
    return new Writing()
        .put("setUp", use.setUp())
        .put("changes", use.changes())
        .put("stoodSeconds", use.stood().toSeconds())
        .put("unknown", use.unknown())
        .putObjects("setups", setups, ClassReportShape::setup)
        .put("setupsOmitted", use.setups().size() - setups.size())
        .done();
  }

  private static ObjectNode setup(EquipmentUse.OfSetup use) {
    return new Writing()
        .put("setup", SetupCodec.write(use.setup()))
        .put("sessions", use.sessions())
        .put("stoodSeconds", use.stood().toSeconds())
        .put("unknown", use.unknown())
        .put("reps", use.reps())
        .done();
  }

  /** How many reps, and how many of them clean. */
  static ObjectNode tally(RepTally tally) {
    return new Writing()
        .put("reps", tally.reps())
        .put("clean", tally.clean())
        .put("helped", tally.helped())
        .put("voided", tally.voided())
        .put("cleanShare", share(tally.cleanShare()))
        .done();
  }

  private static @Nullable ObjectNode share(@Nullable Estimate share) {
    return share == null ? null : ShareShape.of(share);
  }

  /** Something that a page cannot say. */
  static ObjectNode notKnown(NotKnown notKnown, String text) {
    return new Writing()
        .put("matter", notKnown.matter())
        .put("count", notKnown.count())
        .put("text", text)
        .done();
  }

  /** The first of a list. */
  static <T> List<T> first(List<T> all, int most) {
    return all.subList(0, Math.min(all.size(), most));
  }
}
