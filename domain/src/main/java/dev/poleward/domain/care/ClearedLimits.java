package dev.poleward.domain.care;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/** What a dog was cleared up to, in words: of its limits those that are kept to. */
final class ClearedLimits {

  private ClearedLimits() {}

  /**
   * One phrase for each limit.
   *
   * @param clearance null for none, or for one without limits
   */
  static List<String> inWords(@Nullable Map<String, Object> clearance) {
    List<String> words = new ArrayList<>();
    if (clearance != null) {
      say(words, clearance, CareSetting.GAPS_PER_SESSION, n -> count(n, "gap") + " a session");
      say(words, clearance, CareSetting.GAPS_PER_WEEK, n -> count(n, "gap") + " a week");
      say(words, clearance, CareSetting.POLES, n -> n + " poles");
      say(
          words,
          clearance,
          CareSetting.SHARP_BENDS_PER_SESSION,
          n -> count(n, "sharp bend") + " a session");
      say(
          words,
          clearance,
          CareSetting.GROWTH_PERCENT,
          n -> "weeks that grow by at most " + n + "%");
      say(words, clearance, CareSetting.EASE_BACK_DAYS, n -> count(n, "day") + " of easing back");
      say(words, clearance, CareSetting.HEAT_CAUTION, n -> "half the load from " + n + " °C");
      say(words, clearance, CareSetting.HEAT_STOP, n -> "no poles from " + n + " °C");
    }
    return words;
  }

  private static void say(
      List<String> words,
      Map<String, Object> clearance,
      CareSetting setting,
      IntFunction<String> phrase) {
    Integer said = setting.in(clearance);
    if (said != null) {
      words.add(phrase.apply(said));
    }
  }

  private static String count(int count, String what) {
    return count == 0 ? "no " + what + "s" : count == 1 ? "1 " + what : count + " " + what + "s";
  }
}
