package dev.poleward.service.http;

import dev.poleward.domain.record.DaySpan;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.domain.report.ReportSources;
import dev.poleward.service.http.ClubReads.Reader;
import java.util.HashSet;
import java.util.Set;
import java.util.function.BiFunction;

/**
 * The frame around reads that are made of many dogs, as of a day of the club's. Answers are
 * remembered until something is recorded or the day is over. Safe for use by many threads.
 */
final class ReportReads {

  private final ClubReads reads;
  private final PlacedReps placed;
  private final ClubsForgetting clubs;
  private final LocalDays days;

  ReportReads(ClubReads reads, PlacedReps placed, ClubsForgetting clubs, LocalDays days) {
    this.reads = reads;
    this.placed = placed;
    this.clubs = clubs;
    this.days = days;
  }

  /**
   * What is asked by whom.
   *
   * @param asked the view
   * @param day that of it
   */
  record Asking(Call call, Reader reader, Parameters parameters, View asked, LocalDay day) {}

  /** Reads the parameters, refuses them all at once, and answers where nothing was wrong. */
  interface Route {
    Answer answer(Asking asking);
  }

  /**
   * Answers a read.
   *
   * @param besides names of the parameters that the route knows besides the view
   */
  Answer read(Call call, Set<String> besides, Route route) {
    Set<String> known = known(besides);
    return reads.remembered(call, day(known), answer(known, route));
  }

  /** The same, of what speaks of the whole club: not for keys that are narrowed to some dogs. */
  Answer ofWholeClub(Call call, Set<String> besides, Route route) {
    Set<String> known = known(besides);
    return reads.remembered(call, day(known), ClubReads.ofWholeClub(answer(known, route)));
  }

  private static Set<String> known(Set<String> besides) {
    Set<String> known = new HashSet<>(besides);
    known.addAll(Set.of("asOf", "knownAt"));
    return known;
  }

  private BiFunction<Call, Reader, String> day(Set<String> known) {
    return (call, reader) -> days.of(reader, new Parameters(call, known).view()).date().toString();
  }

  private BiFunction<Call, Reader, Answer> answer(Set<String> known, Route route) {
    return (call, reader) -> {
      Parameters parameters = new Parameters(call, known);
      View asked = parameters.view();
      return route.answer(new Asking(call, reader, parameters, asked, days.of(reader, asked)));
    };
  }

  /** What an answer about these days is made from. */
  ReportSources sources(Asking asking, DaySpan span) {
    Reader reader = asking.reader();
    View view = ReportSources.view(asking.asked(), span);
    Placement placement = new Placement(reader.reading().facts(), view);
    Registry registry = new Registry(placement, view);
    return new ReportSources(
        reader.reading().facts(),
        placement,
        registry,
        span,
        Care.limits(registry),
        dog -> placed.ofDog(reader.reading(), placement, view, dog),
        clubs.of(reader.reading(), placement, span.zone()));
  }
}
