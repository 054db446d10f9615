package dev.poleward.service.http;

/** Events as clients write them; apostrophes stand for quotes, for they are easier on the eye. */
final class Said {

  private Said() {}

  /** An event of that time. */
  static String event(String id, String type, String time, String data) {
    return event(id, type, time, data, "");
  }

  /** An event with members besides, each after a comma. */
  static String event(String id, String type, String time, String data, String members) {
    return json(
        "{'specversion':'1.0','id':'%s','source':'/apps/field-notes','type':'%s','time':'%s'%s,'data':%s}"
            .formatted(id, type, time, members, data));
  }

  /** JSON with quotes for apostrophes. */
  static String json(String text) {
    return text.replace('\'', '"');
  }

  /** A time on the day of most tests. */
  static String at(String time) {
    return "2026-05-04T" + time + "Z";
  }

  static String dog(String dog) {
    return event(
        "dog-" + dog,
        "dog.registered.v1",
        "2026-01-10T10:00:00Z",
        "{'dog':'%s','callName':'%s'}".formatted(dog, dog));
  }

  static String handler(String handler, String name) {
    return event(
        "handler-" + handler,
        "handler.registered.v1",
        "2026-01-10T10:00:00Z",
        "{'handler':'%s','name':'%s'}".formatted(handler, name));
  }

  static String session(String session, String time) {
    return event(
        "open-" + session, "session.opened.v1", at(time), "{'session':'%s'}".formatted(session));
  }

  /** A change of the setup; {@code more} are members of the data, each after a comma. */
  static String setup(String id, String session, String time, int angle, String more) {
    return event(
        id,
        "setup.changed.v1",
        at(time),
        "{'session':'%s','setup':{'poles':4,'spacing':0.6,'leadIn':'none','angle':%d}%s}"
            .formatted(session, angle, more));
  }

  /** A clean rep; {@code more} are members of the data, each after a comma. */
  static String rep(String rep, String session, String dog, String time, String more) {
    return event(
        "log-" + rep,
        "rep.logged.v1",
        at(time),
        "{'rep':'%s','session':'%s','dog':'%s','manoeuvre':'alongside','outcome':'clean'%s}"
            .formatted(rep, session, dog, more));
  }
}
