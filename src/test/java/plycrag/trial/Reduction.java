package plycrag.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Makes a parameter file shorter while something holds of it: table by table, line by line. */
final class Reduction {
  private Reduction() {}

  static String of(String text, Predicate<String> holds) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    for (boolean shorter = true; shorter; ) {
      int before = lines.size();
      dropTables(lines, holds);
      dropLines(lines, holds);
      shorter = lines.size() < before;
    }
    return joined(lines);
  }

  private static void dropTables(List<String> lines, Predicate<String> holds) {
    for (int from = 0; from < lines.size(); from++) {
      if (lines.get(from).startsWith("[")) {
        int to = from + 1;
        while (to < lines.size() && !lines.get(to).startsWith("[")) {
          to++;
        }
        from -= dropped(lines, from, to, holds) ? 1 : 0;
      }
    }
  }

  private static void dropLines(List<String> lines, Predicate<String> holds) {
    for (int at = lines.size() - 1; at >= 0; at--) {
      dropped(lines, at, at + 1, holds);
    }
  }

  private static boolean dropped(List<String> lines, int from, int to, Predicate<String> holds) {
    List<String> rest = new ArrayList<>(lines.subList(0, from));
    rest.addAll(lines.subList(to, lines.size()));
    if (!holds.test(joined(rest))) {
      return false;
    }
    lines.subList(from, to).clear();
    return true;
  }

  private static String joined(List<String> lines) {
    return String.join("\n", lines) + "\n";
  }
}
