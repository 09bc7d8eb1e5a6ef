package plycrag.proof.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A plain controller that obeys whatever it can make sense of and complains of nothing: the other
 * opinion on what a damaged program does. It knows G0 G1 G4 G21 M2 M3 M5 and skips comments in
 * parentheses; of all else it keeps that it was asked.
 */
final class PlainRouter {
  private static final Pattern COMMENT = Pattern.compile("\\([^)]*\\)");
  private static final Pattern WORD = Pattern.compile("([A-Z])(-?[0-9.]+)");

  private final Map<Character, Double> state = new TreeMap<>();
  private final List<String> holes = new ArrayList<>();
  private boolean odd;
  private boolean ended;
  private boolean turning;
  private double waited;

  private PlainRouter() {}

  /**
   * What a program does.
   *
   * @param holes place, bottom, spindle and feed of each, sorted
   * @param odd whether something dangerous or unknown is asked for
   */
  record Work(List<String> holes, boolean odd) {}

  /** Plays a program; rapids across and downwards must stay above a height. */
  static Work play(String text, double clearance) {
    PlainRouter router = new PlainRouter();
    for (String line : text.split("\n", -1)) {
      if (!router.ended) {
        router.line(COMMENT.matcher(line).replaceAll(""), clearance);
      }
    }
    return new Work(
        router.holes.stream().sorted().toList(), router.odd || router.turning || !router.ended);
  }

  private void line(String line, double clearance) {
    Map<Character, Double> words = new TreeMap<>();
    Matcher matcher = WORD.matcher(line);
    odd |= !line.replaceAll(WORD.pattern(), "").isBlank();
    while (matcher.find()) {
      char letter = matcher.group(1).charAt(0);
      double value = Double.parseDouble(matcher.group(2));
      if (letter == 'M') {
        machine(value);
      } else if (letter == 'G') {
        odd |= !List.of(0.0, 1.0, 4.0, 17.0, 21.0, 54.0, 90.0, 94.0).contains(value);
        if (value <= 1) {
          state.put('G', value);
        }
      } else {
        words.put(letter, value);
      }
    }
    waited += words.getOrDefault('P', 0.0);
    move(words, clearance);
  }

  private void machine(double value) {
    turning = value == 3 || (turning && value != 5);
    ended |= value == 2;
    waited = value == 3 ? 0 : waited;
  }

  private void move(Map<Character, Double> words, double clearance) {
    double before = state.getOrDefault('Z', Double.NEGATIVE_INFINITY);
    String place = place();
    state.putAll(words);
    double z = state.getOrDefault('Z', Double.NEGATIVE_INFINITY);
    boolean across = !place.equals(place());
    odd |= across && Math.min(before, z) < clearance;
    if (z < before && z < clearance) {
      odd |= state.getOrDefault('G', 0.0) == 0 || !turning || waited < 3;
      holes.add("%s %s S%s F%s".formatted(place(), z, state.get('S'), state.get('F')));
    }
  }

  private String place() {
    return state.get('X') + " " + state.get('Y');
  }
}
