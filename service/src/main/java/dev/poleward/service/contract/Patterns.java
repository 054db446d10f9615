package dev.poleward.service.contract;

import com.networknt.schema.regex.JDKRegularExpressionFactory;
import com.networknt.schema.regex.RegularExpression;
import com.networknt.schema.regex.RegularExpressionFactory;
import java.util.BitSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Compiles the patterns of the contract. Most are a set of ASCII characters and how many of them
 * there may be, for ids without the two words that paths know; those are matched by a table, at a
 * tenth of the cost.
 */
final class Patterns implements RegularExpressionFactory {

  /**
   * No pattern of the contract is for texts nearly as long. The library's patterns call themselves
   * for each repetition of a group, and a text of megabytes would end the stack.
   */
  private static final int CHARACTERS_MAX = 1_024;

  private static final Pattern SPAN =
      Pattern.compile(
          "\\^(\\(\\?!\\\\\\.\\{1,2}\\$\\))?\\[([A-Za-z0-9._~-]+)]\\{(\\d{1,4}),(\\d{1,4})}\\$");

  /** What clients take out of paths. */
  private static final Set<String> STEPS_OF_PATHS = Set.of(".", "..");

  @Override
  public RegularExpression getRegularExpression(String regex) {
    Matcher span = SPAN.matcher(regex);
    if (!span.matches()) {
      RegularExpression slow =
          JDKRegularExpressionFactory.getInstance().getRegularExpression(regex);
      return value -> value.length() <= CHARACTERS_MAX && slow.matches(value);
    }
    return new Span(
        characters(span.group(2)),
        Integer.parseInt(span.group(3)),
        Integer.parseInt(span.group(4)),
        span.group(1) == null ? Set.of() : STEPS_OF_PATHS);
  }

  /** The characters of a class: singly, or from one to another with a hyphen between. */
  private static BitSet characters(String written) {
    BitSet characters = new BitSet();
    for (int i = 0; i < written.length(); i++) {
      char first = written.charAt(i);
      if (i + 2 < written.length() && written.charAt(i + 1) == '-') {
        i += 2;
      }
      characters.set(first, written.charAt(i) + 1);
    }
    return characters;
  }

  /** So many of these characters and nothing else, but for some words. */
  private record Span(BitSet characters, int least, int most, Set<String> not)
      implements RegularExpression {

    @Override
    public boolean matches(String value) {
      if (value.length() < least || value.length() > most || not.contains(value)) {
        return false;
      }
      for (int i = 0; i < value.length(); i++) {
        if (!characters.get(value.charAt(i))) {
          return false;
        }
      }
      return true;
    }
  }
}
