package dev.poleward.domain.report;

import dev.poleward.domain.event.ClassEvent.ClassFormed;
import dev.poleward.domain.record.DaySpan;
import dev.poleward.domain.record.Membership;
import dev.poleward.domain.record.Registered;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What happened in a class within some days: a page about the class, and one about each dog that
 * was a member at some time in them.
 *
 * @param formed the class
 * @param page of the class as a whole; empty in a report for those who see some dogs only
 * @param dogs ascending by id
 * @param omitted so many more dogs there are
 */
public record ClassReport(
    Registered<ClassFormed> formed,
    DaySpan span,
    Optional<ClassPage> page,
    List<DogPage> dogs,
    int omitted) {

  /** Dogs of one report at most; those whose ids come later are left out. */
  public static final int DOGS_MAX = 100;

  /** Keeps the dogs from changing. */
  public ClassReport {
    dogs = List.copyOf(dogs);
  }

  /** The whole report of a class; empty when it is not known. */
  public static Optional<ClassReport> whole(String group, ReportSources sources) {
    return sources
        .registry()
        .group(group)
        .map(
            known -> {
              Making making = new Making(group, sources);
              Making.Pages made = making.pages(_ -> true);
              return new ClassReport(
                  known.formed(),
                  sources.span(),
                  Optional.of(ClassPage.of(making.sessions, made.pages())),
                  made.pages(),
                  made.omitted());
            });
  }

  /**
   * The pages of some dogs, without what is said of the class.
   *
   * @param shown which dogs, by their ids after merges
   */
  public static Optional<ClassReport> ofDogs(
      String group, ReportSources sources, Predicate<String> shown) {
    return sources
        .registry()
        .group(group)
        .map(
            known -> {
              Making.Pages made = new Making(group, sources).pages(shown);
              return new ClassReport(
                  known.formed(), sources.span(), Optional.empty(), made.pages(), made.omitted());
            });
  }

  /** What the pages have in common. For one thread. */
  private static final class Making {

    private record Pages(List<DogPage> pages, int omitted) {}

    private final ReportSources sources;
    private final Map<String, List<Membership>> memberships;
    private final List<ClassSession> sessions;

    Making(String group, ReportSources sources) {
      this.sources = sources;
      this.memberships = sources.registry().memberships(group);
      this.sessions = ClassSession.of(group, sources, memberships);
    }

    Pages pages(Predicate<String> shown) {
      List<String> dogs =
          memberships.entrySet().stream()
              .filter(each -> each.getValue().stream().anyMatch(this::isWithin))
              .map(Map.Entry::getKey)
              .filter(shown)
              .toList();
      DogPages making = new DogPages(sources, sessions);
      List<DogPage> pages =
          dogs.stream()
              .limit(DOGS_MAX)
              .flatMap(
                  dog ->
                      sources
                          .registry()
                          .dog(dog)
                          .map(
                              known ->
                                  making.of(dog, known, memberships.getOrDefault(dog, List.of())))
                          .stream())
              .toList();
      return new Pages(pages, Math.max(0, dogs.size() - DOGS_MAX));
    }

    private boolean isWithin(Membership membership) {
      return membership.overlaps(sources.span().begin(), sources.span().end());
    }
  }
}
