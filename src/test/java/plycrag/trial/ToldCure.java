package plycrag.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plycrag.units.LengthText;
import plycrag.units.LengthUnit;

/** What a refusal tells its reader to write into the file, and the file with it. */
final class ToldCure {
  private static final String ERROR = ": error: ";
  private static final Pattern VALUE =
      Pattern.compile("\\((\\[\\[?[a-z.-]+]]?) ([a-z-]+) = ([^)]+)\\)");
  private static final Pattern FACET = Pattern.compile("\\bfacet (f[0-9]+)\\b");
  private static final Pattern MOVE =
      Pattern.compile("move cutout cutout ([0-9]+) (up|down|to the left|to the right) by ([^,]+),");

  private ToldCure() {}

  /** A refusal as it stands on the console, without how often and where else it came. */
  static List<String> refusals(String told) {
    return told.lines()
        .filter(line -> line.contains(ERROR))
        .map(line -> line.substring(line.indexOf(ERROR) + ERROR.length()))
        .map(line -> line.replaceAll(" \\([0-9]+ times[^)]*\\)", ""))
        .distinct()
        .toList();
  }

  /** The file after each thing that a refusal tells to change, one at a time. */
  static List<String> followed(String refusal, String text) {
    List<String> files = new ArrayList<>();
    Matcher value = VALUE.matcher(refusal);
    while (value.find()) {
      String facet = value.group(1).contains("[facet") ? facet(refusal, value.start()) : "";
      files.add(set(text, value.group(1), facet, value.group(2), value.group(3)));
    }
    Matcher move = MOVE.matcher(refusal);
    while (move.find()) {
      files.add(moved(text, move));
    }
    return files;
  }

  private static String facet(String refusal, int before) {
    String name = "";
    Matcher facet = FACET.matcher(refusal.substring(0, before));
    while (facet.find()) {
      name = facet.group(1);
    }
    return name;
  }

  /** With a value of a key, in a table of the file or in a new one. */
  private static String set(String text, String table, String facet, String key, String value) {
    TomlDraft file = TomlDraft.of(text);
    TomlDraft.Part part =
        facet.isEmpty()
            ? file.part(table)
            : file.partOf(table, one -> one.get("name").filter(quoted(facet)::equals).isPresent());
    part.set(key, value);
    return file.text();
  }

  private static String quoted(String word) {
    return '"' + word + '"';
  }

  private static String moved(String text, Matcher move) {
    TomlDraft file = TomlDraft.of(text);
    TomlDraft.Part cutout = file.parts("[[cutout]]").get(Integer.parseInt(move.group(1)) - 1);
    double by = inFileUnit(move.group(3), text);
    boolean isAcross = move.group(2).startsWith("to the");
    double signed = List.of("down", "to the left").contains(move.group(2)) ? -by : by;
    cutout.shift(isAcross ? signed : 0, isAcross ? 0 : signed);
    return file.text();
  }

  private static double inFileUnit(String length, String text) {
    double millimetres = ((LengthText.Value) LengthText.parse(length)).millimetres();
    boolean isInInches = text.contains("unit = \"in\"");
    return millimetres / (isInInches ? LengthUnit.IN : LengthUnit.MM).millimetres();
  }
}
