package plycrag.files.ngc;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a drilling program as a careful controller would and says what it drills. Shares nothing
 * with the writer. Whatever the contract of programs forbids is an {@link
 * IllegalArgumentException}.
 */
public final class NgcReader {
  private static final Set<String> WORDS =
      Set.of("G0", "G1", "G4", "G17", "G21", "G54", "G90", "G94", "M2", "M3", "M5");
  private static final Set<String> MODES = Set.of("G17", "G21", "G54", "G90", "G94");
  private static final Pattern COMMENT = Pattern.compile("\\([^()]*\\)");
  private static final Pattern WORD =
      Pattern.compile("([XYZF](?=-?[0-9]+\\.)|[GMPS])(-?[0-9]+(?:\\.[0-9]{0,3})?)");

  private final List<String> comments = new ArrayList<>();
  private final List<Hole> holes = new ArrayList<>();
  private final List<Hole> left = new ArrayList<>();
  private final List<Double> travelHeights = new ArrayList<>();
  private final Set<String> modes = new TreeSet<>();
  private Double x;
  private Double y;
  private Double z;
  private double feed;
  private double speed;
  private boolean turning;
  private boolean waited;
  private boolean ended;
  private boolean inHole;

  private NgcReader() {}

  /**
   * A hole.
   *
   * @param x mm
   * @param y mm
   * @param bottom z of its bottom, mm
   */
  public record Hole(double x, double y, double bottom) {}

  /** Reads a program's text. */
  public static NgcReader read(String text) {
    NgcReader reader = new NgcReader();
    check(text.endsWith("\n"), "the last line has no end", "");
    for (String line : text.substring(0, text.length() - 1).split("\n", -1)) {
      check(line.length() <= 72, "longer than 72", line);
      check(line.chars().allMatch(c -> c >= ' ' && c <= '~'), "not ASCII", line);
      check(!reader.ended, "after the end", line);
      reader.line(line);
    }
    check(reader.ended, "no M2", "");
    return reader;
  }

  /** The holes in the order in which they are drilled. */
  public List<Hole> holes() {
    return List.copyOf(holes);
  }

  /** Where the tool came out of the work, in order: the centre of a hole, or a place of a cut. */
  public List<Hole> left() {
    return List.copyOf(left);
  }

  /** What stands in parentheses. */
  public List<String> comments() {
    return List.copyOf(comments);
  }

  /** The heights at which the tool went across, in order, mm. */
  public List<Double> travelHeights() {
    return List.copyOf(travelHeights);
  }

  /** The last spindle speed. */
  public double speed() {
    return speed;
  }

  private void line(String line) {
    if (line.startsWith("(")) {
      check(COMMENT.matcher(line).matches(), "not one comment", line);
      comments.add(line.substring(1, line.length() - 1));
      return;
    }
    Map<Character, Double> values = new HashMap<>();
    List<String> commands = new ArrayList<>();
    for (String word : line.split(" ", -1)) {
      Matcher matcher = WORD.matcher(word);
      check(matcher.matches() && !word.matches(".-0(\\.0*)?"), "not a word", line);
      char letter = word.charAt(0);
      if (letter == 'G' || letter == 'M') {
        check(WORDS.contains(word), "a word of other controllers", line);
        commands.add(word);
      } else {
        check("XYZFSP".indexOf(letter) >= 0, "an unknown letter", line);
        check(values.put(letter, Double.valueOf(matcher.group(2))) == null, "twice", line);
      }
    }
    obey(commands, values, line);
  }

  private void obey(List<String> commands, Map<Character, Double> values, String line) {
    if (MODES.containsAll(commands)) {
      check(values.isEmpty(), "modes with numbers", line);
      modes.addAll(commands);
      return;
    }
    check(commands.size() == 1 && modes.equals(MODES), "not one command, or no modes", line);
    switch (commands.get(0)) {
      case "G0" -> rapid(values, line);
      case "G1" -> feed(values, line);
      case "G4" -> {
        check(values.keySet().equals(Set.of('P')), "a dwell is P alone", line);
        waited = turning;
      }
      case "M3" -> {
        check(values.keySet().equals(Set.of('S')) && values.get('S') > 0, "no speed", line);
        speed = values.get('S');
        turning = true;
        waited = false;
      }
      case "M5" -> {
        check(values.isEmpty() && !inHole, "the spindle stops in a hole", line);
        turning = false;
      }
      default -> {
        check(!turning && !inHole, "ends while turning or down", line);
        ended = true;
      }
    }
  }

  private void rapid(Map<Character, Double> values, String line) {
    if (values.keySet().equals(Set.of('Z'))) {
      check(!inHole || values.get('Z') > z, "a rapid down in a hole", line);
      if (inHole) {
        left.add(new Hole(x, y, z));
      }
      z = values.get('Z');
      inHole = false;
    } else {
      check(values.keySet().equals(Set.of('X', 'Y')), "a rapid is Z or X and Y", line);
      check(z != null && !inHole, "across before Z is clear", line);
      x = values.get('X');
      y = values.get('Y');
      travelHeights.add(z);
    }
  }

  private void feed(Map<Character, Double> values, String line) {
    check(turning && waited, "the spindle is not at speed", line);
    if (values.containsKey('X')) {
      cut(values, line);
      return;
    }
    check(values.keySet().equals(Set.of('Z', 'F')), "a plunge is Z and F", line);
    check(x != null && z != null && values.get('Z') < z, "not down from a known place", line);
    feed = values.get('F');
    check(feed > 0, "no feed", line);
    z = values.get('Z');
    inHole = true;
    holes.add(new Hole(x, y, z));
  }

  private void cut(Map<Character, Double> values, String line) {
    check(values.containsKey('Y') && values.getOrDefault('F', 0.0) > 0, "X, Y and F", line);
    check(inHole, "a cut across before a plunge", line);
    x = values.get('X');
    y = values.get('Y');
    z = values.getOrDefault('Z', z);
  }

  private static void check(boolean holds, String fault, String line) {
    if (!holds) {
      throw new IllegalArgumentException(fault + ": " + line);
    }
  }
}
