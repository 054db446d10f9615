package dev.poleward.service.journal;

/**
 * Names of a record's headers. Those of CloudEvents' Kafka binding (binary mode) tell everybody
 * what happened; ours, with {@code pw_}, are for this service alone.
 */
final class EntryHeaders {

  static final String ATTRIBUTE = "ce_";

  static final String SPEC_VERSION = "ce_specversion";
  static final String ID = "ce_id";
  static final String SOURCE = "ce_source";
  static final String TYPE = "ce_type";
  static final String TIME = "ce_time";
  static final String SUBJECT = "ce_subject";
  static final String DATA_SCHEMA = "ce_dataschema";

  /** An extension of CloudEvents: when the event was recorded, RFC 3339 in UTC. */
  static final String RECORDED_TIME = "ce_recordedtime";

  static final String CONTENT_TYPE = "content-type";

  /** There, and {@code given}, when the recording time came with an import. */
  static final String RECORDED_GIVEN = "pw_recorded";

  /** Whose key seals the personal members: {@code person/keyId}. */
  static final String PERSON = "pw_person";

  /** The sealed personal members, base64url. */
  static final String SEALED = "pw_sealed";

  /**
   * Which extensions are no text, since headers know nothing else: {@code name=kind} with commas
   * between; {@code boolean}, {@code integer} (32 bits) or {@code long} (64 bits).
   */
  static final String KINDS = "pw_kinds";

  private EntryHeaders() {}
}
