package dev.poleward.domain.history;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.EventWithdrawn;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.MemoryFacts;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.View;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** What the tests of laws have in common. */
final class Laws {

  private static final Pattern RECORDED = Pattern.compile("recorded=[^,]++, ");

  private Laws() {}

  static Map<String, Object> answers(List<Fact<?>> facts, View view) {
    return EveryAnswer.of(MemoryFacts.of(facts), view);
  }

  /** Equal, and written alike too, so that the order inside maps and sets counts. */
  static void assertSame(Map<String, Object> one, Map<String, Object> other) {
    assertThat(EveryAnswer.differences(one, other)).isEmpty();
    assertThat(other).hasToString(one.toString());
  }

  /** As much as both were asked is answered alike. */
  static void assertSameWhereBothAsked(Map<String, Object> one, Map<String, Object> other) {
    Map<String, Object> these = new TreeMap<>(one);
    Map<String, Object> those = new TreeMap<>(other);
    these.keySet().retainAll(other.keySet());
    those.keySet().retainAll(one.keySet());
    assertSame(these, those);
  }

  static Map<String, Object> without(Map<String, Object> answers, Predicate<String> questions) {
    Map<String, Object> rest = new TreeMap<>(answers);
    rest.keySet().removeIf(questions);
    return rest;
  }

  /** In any order, some of it again, recorded any time later. */
  static List<Fact<?>> muddled(List<Fact<?>> facts, Random random) {
    List<Fact<?>> muddled = new ArrayList<>(facts);
    int repeats = random.nextInt(1 + facts.size());
    for (int i = 0; i < repeats; i++) {
      Fact<?> fact = facts.get(random.nextInt(facts.size()));
      muddled.add(later(fact, Duration.ofSeconds(random.nextInt(900))));
    }
    Collections.shuffle(muddled, random);
    return muddled;
  }

  /** The same, recorded by so much later. */
  static <E extends TrainingEvent> Fact<E> later(Fact<E> fact, Duration by) {
    return new Fact<>(fact.moment(), fact.recorded().plus(by), fact.event(), fact.sealed());
  }

  /** Answers as they are written, but for when something was recorded. */
  static String withoutRecordingTimes(Map<String, Object> answers) {
    return RECORDED.matcher(answers.toString()).replaceAll("");
  }

  static List<Fact<?>> those(List<Fact<?>> facts, Predicate<Fact<?>> wanted) {
    return facts.stream().filter(wanted).toList();
  }

  /** The whole record, and a view that cuts it somewhere in one time or in both. */
  static List<View> views(Random random) {
    Instant asOf = GeneratedHistory.anyTime(random);
    Instant knownAt = GeneratedHistory.anyRecordingTime(random);
    View cut =
        switch (random.nextInt(3)) {
          case 0 -> new View(asOf, null);
          case 1 -> new View(null, knownAt);
          default -> new View(asOf, knownAt);
        };
    return List.of(View.EVERYTHING, cut);
  }

  /** Withdraws a fact in the same breath as it is recorded. */
  static Fact<?> withdrawalOf(Fact<?> fact) {
    return new Fact<>(
        new Moment(fact.time(), "w-" + fact.id()),
        fact.recorded(),
        new EventWithdrawn(fact.id(), "a mistake"),
        null);
  }

  static List<Fact<?>> withdrawing(List<Fact<?>> facts, List<Fact<?>> withdrawn) {
    List<Fact<?>> all = new ArrayList<>(facts);
    withdrawn.forEach(fact -> all.add(withdrawalOf(fact)));
    return all;
  }
}
