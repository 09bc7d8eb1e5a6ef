package plycrag.units;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that a mistyped one is nearest to. */
public final class NearestWord {
  private static final int SHORTEST_PART = 3;
  private static final int LONGEST = 40;

  private NearestWord() {}

  /** The known word that is nearest, if any is near; upper and lower case are the same. */
  public static Optional<String> find(String typed, List<String> known) {
    String small = typed.toLowerCase(Locale.ROOT);
    return known.stream()
        .filter(word -> isNear(small, word))
        .min(Comparator.comparingInt(word -> distance(small, word)));
  }

  /** Whether a third of the letters differ at most, or one is the beginning or end of the other. */
  public static boolean isNear(String typed, String word) {
    int longer = Math.max(typed.length(), word.length());
    return longer <= LONGEST && (isPart(typed, word) || 3 * distance(typed, word) <= longer);
  }

  private static boolean isPart(String typed, String word) {
    return Math.min(typed.length(), word.length()) >= SHORTEST_PART
        && (typed.startsWith(word) || word.startsWith(typed) || word.endsWith(typed));
  }

  /**
   * How many letters must be put in, taken out, replaced, or swapped with their neighbour (optimal
   * string alignment).
   */
  public static int distance(String from, String to) {
    int[][] steps = new int[from.length() + 1][to.length() + 1];
    for (int i = 0; i <= from.length(); i++) {
      for (int j = 0; j <= to.length(); j++) {
        steps[i][j] = Math.min(i, j) == 0 ? Math.max(i, j) : cheapest(steps, from, to, i, j);
      }
    }
    return steps[from.length()][to.length()];
  }

  private static int cheapest(int[][] steps, String from, String to, int i, int j) {
    int same = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
    int one = Math.min(steps[i - 1][j], steps[i][j - 1]) + 1;
    int best = Math.min(one, steps[i - 1][j - 1] + same);
    boolean swapped =
        i > 1
            && j > 1
            && from.charAt(i - 1) == to.charAt(j - 2)
            && from.charAt(i - 2) == to.charAt(j - 1);
    return swapped ? Math.min(best, steps[i - 2][j - 2] + 1) : best;
  }
}
