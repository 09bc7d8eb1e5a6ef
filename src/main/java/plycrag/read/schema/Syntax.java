package plycrag.read.schema;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tomlj.TomlParseResult;
import plycrag.read.text.Explanation;
import plycrag.read.text.Faults;
import plycrag.read.text.SourcePlace;
import plycrag.units.Printable;

/**
 * What could not be read as TOML. Reports one finding for each entry or header, and remembers them,
 * so that nobody reports the consequences.
 */
public final class Syntax {
  private static final String RULE = "syntax";

  /** A file with more faults than this is another kind of file; the first ones say so. */
  private static final int MOST = 100;

  private static final Pattern TWICE =
      Pattern.compile(".*previously defined at line (?<line>\\d+), .*", Pattern.DOTALL);
  private static final Pattern SWALLOWED =
      Pattern.compile(".*end of input, expected (?<quotes>\"\"\"|''').*");
  private static final Pattern TOO_LARGE = Pattern.compile("(Integer|Float) is too large.*");

  private final SourceLines lines;
  private final Faults faults;
  private final Set<Integer> reportedStarts = new HashSet<>();
  private final Set<Integer> lostHeaders = new HashSet<>();
  private final Set<String> brokenKeys = new HashSet<>();
  private boolean whole = true;

  private Syntax(SourceLines lines, Faults faults) {
    this.lines = lines;
    this.faults = faults;
  }

  /**
   * Reports what the TOML reader complained of. A header that it complained of is lost unless it
   * found the table nevertheless.
   */
  public static Syntax report(
      String text, TomlParseResult result, List<TableSpec> tables, Faults faults) {
    Syntax syntax = new Syntax(new SourceLines(text, tables), faults);
    Set<Integer> tableLines = new TomlTables(result).tableLines();
    syntax.whole = result.errors().size() <= MOST;
    result.errors().stream()
        .limit(MOST)
        .sorted(Comparator.comparingInt(error -> error.position().line()))
        .forEach(
            error ->
                syntax.report(error.getMessage(), SourcePlace.of(error.position()), tableLines));
    return syntax;
  }

  /** Whether the entry of that full key could not be read. */
  public boolean isBroken(String key) {
    return brokenKeys.contains(key);
  }

  /** Whether a place is under a header that could not be read, so that its table is unknown. */
  public boolean isLost(SourcePlace place) {
    return !lostHeaders.isEmpty() && lostHeaders.contains(lines.header(place.line()));
  }

  /** Whether a place is under a header, where no key of the file's top level can stand. */
  public boolean isUnderHeader(SourcePlace place) {
    return lines.header(place.line()) > 0;
  }

  /** Whether every entry is known to have its table, and none was swallowed by an open text. */
  public boolean isWhole() {
    return whole;
  }

  private void report(String message, SourcePlace place, Set<Integer> tableLines) {
    Matcher swallowed = SWALLOWED.matcher(message);
    if (swallowed.matches()) {
      whole = false;
      reportEntry(message, lines.last(swallowed.group("quotes")));
      return;
    }
    int start = lines.start(place.line());
    Matcher twice = TWICE.matcher(message);
    if (!reportedStarts.add(start)) {
      return;
    }
    if (twice.matches()) {
      reportTwice(start, place, twice.group("line"));
    } else if (lines.isHeader(start)) {
      reportHeader(start, place, tableLines);
    } else {
      reportEntry(message, place);
    }
  }

  private void reportTwice(int start, SourcePlace place, String first) {
    if (lines.isHeader(start)) {
      lose(start);
    }
    boolean underReported = reportedStarts.contains(lines.header(start));
    Optional<String> key =
        lines.isHeader(start) ? Optional.of(lines.table(start)) : lines.key(start);
    if (lines.isHeader(start) || !underReported) {
      faults.add(
          key.orElse(RULE),
          place,
          "this stands a second time, first on line " + first,
          "once is allowed");
    }
  }

  private void reportHeader(int start, SourcePlace place, Set<Integer> tableLines) {
    if (!tableLines.contains(start)) {
      lose(start);
    }
    faults.add(
        RULE,
        place,
        Printable.quoted(lines.text(start).strip()) + " is not the header of a table",
        "a name in brackets on a line of its own is allowed, as in [wall] or [[facet]]");
  }

  /** The TOML reader puts what follows such a header into the table before it. */
  private void lose(int header) {
    lostHeaders.add(header);
    whole = false;
  }

  private void reportEntry(String message, SourcePlace place) {
    int start = lines.start(place.line());
    Optional<String> key = lines.key(start);
    key.ifPresent(brokenKeys::add);
    String value = lines.value(start);
    if (!lines.isEntry(start)) {
      String wrong = Printable.quoted(lines.text(start).strip()) + " is not an entry";
      faults.add(key.orElse(RULE), place, wrong, "an entry such as width = 2400 is allowed");
    } else if (TOO_LARGE.matcher(message).matches()) {
      faults.add(key.orElse(RULE), place, "the number is too large", "a smaller number is allowed");
    } else {
      Explanation why = Explanation.of(value);
      faults.add(key.orElse(RULE), place, why.wrongWith(value), why.allowed());
    }
  }
}
