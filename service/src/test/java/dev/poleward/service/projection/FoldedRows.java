package dev.poleward.service.projection;

import dev.poleward.service.journal.Entry;
import dev.poleward.service.journal.Journal;
import dev.poleward.service.journal.JournalRecord;
import dev.poleward.service.journal.MemoryJournal;
import dev.poleward.service.journal.Place;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Rows in a folder, to which tests apply entries of any number of clubs in batches of their choice.
 * For one thread; readings may be had by many.
 */
public final class FoldedRows implements AutoCloseable {

  private final MemoryJournal journal = new MemoryJournal();
  private final RowStore store;
  private final AppliedOffsets applied;
  private final HeardFolds heard = new HeardFolds();
  private final FoldThread fold;
  private final RowClubReader reader;
  private int clubs;

  /** Opens the rows in a folder, or begins some. */
  public FoldedRows(Path folder) {
    this(folder, new long[Journal.PARTITIONS]);
  }

  /** The same with a backlog up to these ends, through which rows are only written to memory. */
  FoldedRows(Path folder, long[] ends) {
    store = RowStore.open(folder, RowSettings.DEFAULT);
    applied = new AppliedOffsets(Projection.appliedIn(store));
    fold =
        new FoldThread(
            IntStream.range(0, Journal.PARTITIONS).boxed().toList(),
            journal,
            ends,
            store,
            new Rows(HistoryEntries.CODEC),
            applied,
            heard);
    reader = new RowClubReader(store, HistoryEntries.CODEC, CatchUp.SOLE_NODE);
  }

  /** A club that is not in these rows yet. */
  public String aClub() {
    return "club-" + ++clubs;
  }

  /** Applies entries, of any clubs, as one batch; tells where in the journal they stood. */
  public List<Place> apply(List<Entry> batch) {
    long[] next = applied.next();
    List<Place> places = new ArrayList<>();
    List<JournalRecord> records = new ArrayList<>();
    for (Entry entry : batch) {
      int partition = journal.partitionOf(entry.club());
      Place place = new Place(partition, next[partition]++);
      places.add(place);
      records.add(new JournalRecord.Recorded(place, entry));
    }
    fold.apply(records);
    return places;
  }

  /** Applies each of these batches in turn. */
  public void applyAll(List<List<Entry>> batches) {
    batches.forEach(this::apply);
  }

  void applyRecords(List<JournalRecord> records) {
    fold.apply(records);
  }

  /** For each partition the next offset to apply. */
  long[] next() {
    return applied.next();
  }

  HeardFolds heard() {
    return heard;
  }

  RowStore store() {
    return store;
  }

  /** What is applied of a club now. To be closed. */
  public Reading open(String club) {
    return reader.open(club);
  }

  /** Opens readings of these rows. */
  public ClubReader reader() {
    return reader;
  }

  /** Leaves the folder as it is. */
  @Override
  public void close() {
    store.close();
  }
}
