package dev.poleward.service.projection;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import dev.poleward.domain.record.Corrections;
import dev.poleward.domain.record.Fact;
import dev.poleward.service.codec.EventCodec;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Opens readings from rows. Safe for use by many threads. */
public final class RowClubReader implements ClubReader {

  private static final int CORRECTIONS_HELD_MAX = 200_000;

  private record Gathered(long count, Corrections corrections) {}

  private final RowStore store;
  private final EventCodec codec;
  private final Rows rows;
  private final CatchUp catchUp;
  private final Cache<String, Gathered> gathered =
      Caffeine.newBuilder()
          .maximumWeight(CORRECTIONS_HELD_MAX)
          .weigher((String club, Gathered each) -> (int) Math.min(each.count() + 1, 1_000_000))
          .build();

  /** Reads the rows of a store once {@code catchUp} has caught up. */
  public RowClubReader(RowStore store, EventCodec codec, CatchUp catchUp) {
    this.store = store;
    this.codec = codec;
    this.rows = new Rows(codec);
    this.catchUp = catchUp;
  }

  @Override
  public boolean catchUp(String club, Duration wait) {
    return catchUp.catchUp(club, wait);
  }

  @Override
  public Reading open(String club) {
    RowSnapshot snapshot = store.snapshot();
    try {
      byte @Nullable [] row = snapshot.get(RowKeys.club(club));
      ClubRow counters = row == null ? ClubRow.NEW : ClubRow.read(row);
      RowFacts facts =
          new RowFacts(
              club, snapshot, rows, () -> corrections(club, snapshot, counters.corrections()));
      return new RowReading(club, counters.position(), snapshot, rows, facts, codec);
    } catch (RuntimeException e) {
      snapshot.close();
      throw e;
    }
  }

  /** Corrections are few; all of a club's are held, and gathered anew when there are more. */
  private Corrections corrections(String club, RowSnapshot snapshot, long count) {
    Gathered before = gathered.getIfPresent(club);
    if (before != null && before.count() == count) {
      return before.corrections();
    }
    List<Fact<?>> facts = new ArrayList<>();
    byte[] prefix = RowKeys.corrections(club).done();
    snapshot.scan(prefix, prefix, (_, row) -> facts.add(rows.readFact(row)));
    Corrections corrections = Corrections.of(facts);
    if (before == null || before.count() < count) {
      gathered.put(club, new Gathered(count, corrections));
    }
    return corrections;
  }
}
