package dev.poleward.domain.record;

/** Something an event speaks of, by kind and id. */
public record EntityRef(EntityKind kind, String id) implements Comparable<EntityRef> {

  /** The club whose record it is. */
  public static final EntityRef CLUB_ITSELF = new EntityRef(EntityKind.CLUB, "-");

  /**
   * The programme that ships with the service: known in every club, whatever is recorded. What a
   * club publishes under its id is kept and has no effect.
   */
  public static final EntityRef DEFAULT_PROGRAMME =
      new EntityRef(EntityKind.PROGRAMME, "poleward-default");

  @Override
  public int compareTo(EntityRef other) {
    int byKind = kind.compareTo(other.kind);
    return byKind != 0 ? byKind : id.compareTo(other.id);
  }
}
