package dev.poleward.domain.programme;

import static dev.poleward.domain.programme.Written.sound;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.programme.DocumentReading.Faulty;
import dev.poleward.domain.programme.DocumentReading.Sound;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What holds of every document, whatever it is. */
class DocumentLawsTest {

  private static final int DOCUMENTS = 3_000;

  @Test
  void aProgrammeThatIsWrittenAndReadIsTheSame() {
    for (long seed = 1; seed <= DOCUMENTS; seed++) {
      Programme programme = new ProgrammeMaker(new SplittableRandom(seed)).programme();

      assertThat(sound(DocumentWriting.of(programme))).as("seed %d", seed).isEqualTo(programme);
    }
  }

  @Test
  void aSpoiledDocumentIsReadOrToldItsFaults() {
    int faulty = 0;
    for (long seed = 1; seed <= DOCUMENTS; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Object document = DocumentWriting.of(new ProgrammeMaker(random).programme());
      for (int spoilt = 1 + random.nextInt(4); spoilt > 0; spoilt--) {
        document = spoiled(document, random);
      }
      Map<String, Object> members = members(document);

      switch (read(members, seed)) {
        case Sound(Programme programme) ->
            assertThat(sound(DocumentWriting.of(programme))).isEqualTo(programme);
        case Faulty(List<DocumentFault> faults) -> {
          faulty++;
          assertWellMade(faults, members, seed);
        }
      }
    }

    // Spoiling spoils most, and not all: else it would try nothing.
    assertThat(faulty).isBetween(DOCUMENTS / 4, DOCUMENTS - 1);
  }

  private static DocumentReading read(Map<String, Object> document, long seed) {
    try {
      return ProgrammeDocument.read(document);
    } catch (RuntimeException e) {
      throw new AssertionError("seed %d: %s".formatted(seed, document), e);
    }
  }

  private static void assertWellMade(
      List<DocumentFault> faults, Map<String, Object> document, long seed) {
    assertThat(faults).as("seed %d", seed).isNotEmpty();
    assertThat(faults).extracting(DocumentFault::pointer).doesNotHaveDuplicates();
    for (DocumentFault fault : faults) {
      int last = fault.pointer().lastIndexOf('/');
      assertThat(fault.pointer()).as("seed %d", seed).startsWith("/");
      assertThat(isThere(document, fault.pointer().substring(0, last)))
          .as("seed %d: %s in %s", seed, fault, document)
          .isTrue();
    }
  }

  private static boolean isThere(Object document, String pointer) {
    Object at = document;
    for (String step : pointer.isEmpty() ? List.<String>of() : steps(pointer)) {
      Object next =
          switch (at) {
            case Map<?, ?> map -> map.get(step);
            case List<?> list -> list.get(Integer.parseInt(step));
            default -> null;
          };
      if (next == null) {
        return false;
      }
      at = next;
    }
    return true;
  }

  private static List<String> steps(String pointer) {
    return List.of(pointer.substring(1).split("/", -1));
  }

  /** Something of it changed, taken away or put in the place of something else. */
  private static @Nullable Object spoiled(@Nullable Object value, SplittableRandom random) {
    return switch (value) {
      case Map<?, ?> map when !map.isEmpty() && random.nextInt(8) > 0 -> {
        Map<Object, @Nullable Object> copy = new LinkedHashMap<>(map);
        Object name = new ArrayList<>(map.keySet()).get(random.nextInt(map.size()));
        if (random.nextInt(6) == 0) {
          copy.remove(name);
        } else {
          copy.put(name, spoiled(map.get(name), random));
        }
        yield copy;
      }
      case List<?> list when !list.isEmpty() && random.nextInt(8) > 0 -> {
        List<@Nullable Object> copy = new ArrayList<>(list);
        int at = random.nextInt(list.size());
        switch (random.nextInt(6)) {
          case 0 -> copy.remove(at);
          case 1 -> copy.add(list.get(at));
          default -> copy.set(at, spoiled(list.get(at), random));
        }
        yield copy;
      }
      case null, default -> anything(random);
    };
  }

  private static @Nullable Object anything(SplittableRandom random) {
    return switch (random.nextInt(14)) {
      case 0 -> null;
      case 1 -> -1L;
      case 2 -> 0L;
      case 3 -> Long.MAX_VALUE;
      case 4 -> 180.0;
      case 5 -> -0.0;
      case 6 -> Double.NaN;
      case 7 -> 1e300;
      case 8 -> "";
      case 9 -> "s-0";
      case 10 -> true;
      case 11 -> Collections.nCopies(200, "s-1");
      case 12 -> Map.of();
      default -> List.of();
    };
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> members(@Nullable Object document) {
    return document instanceof Map<?, ?> map ? (Map<String, Object>) map : Map.of();
  }
}
