package plycrag.read.schema;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plycrag.read.text.SourcePlace;

/**
 * The lines of a file that is not well formed, read just closely enough to say to which entry a
 * line belongs. Lines count from 1.
 */
final class SourceLines {
  private static final Pattern HEADER =
      Pattern.compile("\\s*(?<brackets>\\[\\[?)\\s*(?<name>[\\p{L}_\"'][^\\[\\]#]*|(?=\\]))\\s*.*");
  private static final Pattern ENTRY =
      Pattern.compile("\\s*(?<key>[\\w\"'-][\\w\"'. \\t-]*?)\\s*=(?<value>.*)");
  private static final Pattern WORD = Pattern.compile("\\s*(?<key>[\\w-]+).*");

  private final List<String> lines;
  private final List<TableSpec> tables;

  /**
   * The lines of a text.
   *
   * @param tables that the file may have
   */
  SourceLines(String text, List<TableSpec> tables) {
    this.tables = List.copyOf(tables);
    lines = Arrays.asList(text.split("\r?\n", -1));
  }

  /** The line on which the entry or header begins that goes on in this line. */
  int start(int line) {
    if (isHeader(line) || isEntry(line)) {
      return line;
    }
    int above = line - 1;
    while (above >= 1 && !isHeader(above) && !isEntry(above)) {
      above--;
    }
    return above >= 1 && isEntry(above) && isOpen(above, line) ? above : line;
  }

  boolean isHeader(int line) {
    return HEADER.matcher(text(line)).matches();
  }

  /** What stands to the right of the equals sign; the whole line where there is none. */
  String value(int line) {
    Matcher entry = ENTRY.matcher(text(line));
    return (entry.matches() ? entry.group("value") : text(line)).strip();
  }

  boolean isEntry(int line) {
    return ENTRY.matcher(text(line)).matches();
  }

  /** The place at which certain words stand for the last time. */
  SourcePlace last(String words) {
    int line = lines.size();
    while (line > 1 && !text(line).contains(words)) {
      line--;
    }
    String found = text(line);
    int before = Math.max(0, found.lastIndexOf(words));
    return new SourcePlace(line, 1 + found.codePointCount(0, before));
  }

  /** The header above a line, or in it; 0 where there is none. */
  int header(int line) {
    int above = line;
    while (above >= 1 && !isHeader(above)) {
      above--;
    }
    return above;
  }

  /** The full name of the table that a line belongs to, {@code facet[1]}; empty for none. */
  String table(int line) {
    int header = header(line);
    if (header == 0) {
      return "";
    }
    String name = headerName(header);
    String outer = outer(name);
    return spec(outer).filter(TableSpec::isList).isPresent()
        ? outer + "[" + count(outer, header) + "]" + name.substring(outer.length())
        : name;
  }

  /** The name of the table at the top level that a header's table stands in, or that it is. */
  private static String outer(String name) {
    int dot = name.indexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  /** The full key of the entry that begins in a line, if it can be made out. */
  Optional<String> key(int line) {
    Matcher entry = ENTRY.matcher(text(line));
    Matcher word = WORD.matcher(text(line));
    if (entry.matches()) {
      return Optional.of(full(line, unquoted(entry.group("key"))));
    }
    return word.matches() && isKnown(line, word.group("key"))
        ? Optional.of(full(line, word.group("key")))
        : Optional.empty();
  }

  private String full(int line, String key) {
    String table = table(line);
    return table.isEmpty() ? key : table + "." + key;
  }

  private boolean isKnown(int line, String key) {
    int header = header(line);
    return header > 0 && declared(headerName(header)).flatMap(one -> one.find(key)).isPresent();
  }

  /** The table of a header, which may stand in another. */
  private Optional<TableSpec> declared(String name) {
    String outer = outer(name);
    return outer.equals(name)
        ? spec(name)
        : spec(outer).flatMap(table -> table.findInner(name.substring(outer.length() + 1)));
  }

  private Optional<TableSpec> spec(String name) {
    return tables.stream().filter(table -> table.name().equals(name)).findFirst();
  }

  private String headerName(int line) {
    Matcher header = HEADER.matcher(text(line));
    return header.matches() ? unquoted(header.group("name").strip()) : "";
  }

  private long count(String name, int last) {
    return lines.stream()
        .limit(last)
        .map(HEADER::matcher)
        .filter(Matcher::matches)
        .filter(header -> unquoted(header.group("name").strip()).equals(name))
        .count();
  }

  /** Whether a bracket of the entry is still open before a line. */
  private boolean isOpen(int start, int line) {
    String between = String.join("\n", lines.subList(start - 1, line - 1));
    String bare = between.replaceAll("\"[^\"\n]*\"|'[^'\n]*'|#[^\n]*", "");
    return bare.chars().map(SourceLines::opening).sum() > 0;
  }

  private static int opening(int character) {
    return switch (character) {
      case '[', '{' -> 1;
      case ']', '}' -> -1;
      default -> 0;
    };
  }

  private static String unquoted(String key) {
    return key.replaceAll("^[\"']|[\"']$", "");
  }

  /** A line, empty beyond the end of the file. */
  String text(int line) {
    return line >= 1 && line <= lines.size() ? lines.get(line - 1) : "";
  }
}
