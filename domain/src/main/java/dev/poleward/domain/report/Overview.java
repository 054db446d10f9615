package dev.poleward.domain.report;

import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.KnownDog;
import dev.poleward.domain.record.Registry;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Some of a club's dogs at a glance on one day, with its classes.
 *
 * @param dogs of the club, ascending by id
 * @param guests that train here, ascending by id
 * @param stages of the club's own dogs
 * @param classes ascending by id
 * @param moreClasses whether there are more than {@link #CLASSES_MAX}
 * @param next the id after which to go on; empty when these are the last
 */
public record Overview(
    List<DogGlance> dogs,
    List<DogGlance> guests,
    List<StageCount> stages,
    List<ClassGlance> classes,
    boolean moreClasses,
    Optional<String> next) {

  /** Dogs and guests of one overview at most. */
  public static final int DOGS_MAX = 300;

  /** Classes of one overview at most. */
  public static final int CLASSES_MAX = 200;

  private static final int PAGE = 100;

  /** Keeps the lists from changing. */
  public Overview {
    dogs = List.copyOf(dogs);
    guests = List.copyOf(guests);
    stages = List.copyOf(stages);
    classes = List.copyOf(classes);
  }

  /**
   * The next dogs of a club.
   *
   * @param sources of one day
   * @param after dogs with ids above this one; empty for the first
   * @param limit how many dogs and guests, 1 to {@link #DOGS_MAX}
   */
  public static Overview of(ReportSources sources, String after, int limit) {
    Registry registry = sources.registry();
    List<KnownDog> known =
        KnownDog.ofClub(sources.facts(), registry, after).limit(limit + 1L).toList();
    List<DogGlance> glances =
        known.stream()
            .limit(limit)
            .map(each -> DogGlance.of(each.dog(), each.record(), sources))
            .toList();
    List<DogGlance> dogs = glances.stream().filter(Predicate.not(DogGlance::isGuest)).toList();
    List<ClassGlance> classes =
        classes(sources.facts())
            .flatMap(id -> registry.group(id).stream())
            .map(group -> new ClassGlance(group.formed(), group.members().size()))
            .limit(CLASSES_MAX + 1L)
            .toList();
    return new Overview(
        dogs,
        glances.stream().filter(DogGlance::isGuest).toList(),
        StageCount.of(dogs),
        classes.stream().limit(CLASSES_MAX).toList(),
        classes.size() > CLASSES_MAX,
        known.size() > limit ? Optional.of(known.get(limit - 1).dog()) : Optional.empty());
  }

  /** Ids of classes that were ever announced, ascending, read in portions. */
  private static Stream<String> classes(Facts facts) {
    return Stream.iterate(
            facts.announced(EntityKind.CLASS, "", PAGE),
            page -> !page.isEmpty(),
            page -> facts.announced(EntityKind.CLASS, page.getLast(), PAGE))
        .flatMap(List::stream);
  }
}
