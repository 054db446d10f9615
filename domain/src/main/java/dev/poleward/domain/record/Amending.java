package dev.poleward.domain.record;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How one amendment treats one field: a new value wins, a cleared field goes, the rest stays.
 *
 * @param cleared fields that the amendment takes away
 */
record Amending(Set<? extends Enum<?>> cleared) {

  <T> @Nullable T of(Enum<?> field, @Nullable T changed, @Nullable T before) {
    if (changed != null) {
      return changed;
    }
    return cleared.contains(field) ? null : before;
  }
}
