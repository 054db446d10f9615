package dev.poleward.service.http;

/** What a request can be refused for; one for each problem type of the contract. */
enum ProblemKind {
  INVALID("invalid", 400, "The request has faults"),
  UNAUTHENTICATED("unauthenticated", 401, "No valid access key"),
  FORBIDDEN("forbidden", 403, "The key does not open this"),
  NOT_FOUND("not-found", 404, "There is no such thing"),
  METHOD_NOT_ALLOWED("method-not-allowed", 405, "This path does not know this method"),
  NOT_ACCEPTABLE("not-acceptable", 406, "None of the forms asked for is offered"),
  CONTRADICTED("contradicted", 409, "Other content is recorded under this id"),
  TOO_LARGE("too-large", 413, "Too large"),
  UNSUPPORTED_MEDIA_TYPE("unsupported-media-type", 415, "This kind of body is not read here"),
  INTERNAL("internal", 500, "A fault of the service"),
  NOT_READY("not-ready", 503, "The service is not ready yet"),
  JOURNAL_UNAVAILABLE("journal-unavailable", 503, "The journal does not take events now"),
  DISK_NEARLY_FULL("disk-nearly-full", 503, "The disk is nearly full"),
  NOT_IN_TIME("not-in-time", 504, "Not in time");

  private final String name;
  private final int status;
  private final String title;

  ProblemKind(String name, int status, String title) {
    this.name = name;
    this.status = status;
    this.title = title;
  }

  /** The last part of the problem's type. */
  String slug() {
    return name;
  }

  int status() {
    return status;
  }

  String title() {
    return title;
  }
}
