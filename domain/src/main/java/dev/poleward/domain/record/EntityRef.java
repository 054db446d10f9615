package dev.poleward.domain.record;

/** Something an event speaks of, by kind and id. */
public record EntityRef(EntityKind kind, String id) implements Comparable<EntityRef> {

  /** The club whose record it is. */
  public static final EntityRef CLUB_ITSELF = new EntityRef(EntityKind.CLUB, "-");

  @Override
  public int compareTo(EntityRef other) {
    int byKind = kind.compareTo(other.kind);
    return byKind != 0 ? byKind : id.compareTo(other.id);
  }
}
