package dev.poleward.service.demo;

/** What sends events of the invented club: {@code source} of its events. */
final class Source {

  static final String OFFICE = "/apps/office";
  static final String TABLET = "/apps/club-tablet";
  static final String ODAS_PHONE = "/phones/oda";
  static final String GATE = "/devices/gate-1";
  static final String RUBENS_PHONE = "/phones/ruben";

  private Source() {}
}
