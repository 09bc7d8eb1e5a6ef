package plycrag.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import plycrag.units.Decimal;

/**
 * A parameter file as its user changes it: tables with a line a key.
 *
 * @param parts in the file's order
 */
record TomlDraft(List<TomlDraft.Part> parts) {
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");
  private static final int DIGITS = 3;

  /** One table with its lines. */
  record Part(String table, List<String> lines) {
    Optional<String> get(String key) {
      return lines.stream()
          .filter(line -> line.startsWith(key + " = "))
          .map(line -> line.substring(key.length() + " = ".length()))
          .findFirst();
    }

    void set(String key, String value) {
      lines.removeIf(line -> line.startsWith(key + " = "));
      lines.add(key + " = " + value);
    }

    /** Moves what it tells the place of, in the file's unit. */
    void shift(double across, double up) {
      shift("left", across, across);
      shift("low", up, up);
      shift("centre", across, up);
      shift("outline", across, up);
    }

    private void shift(String key, double first, double second) {
      get(key).ifPresent(value -> set(key, shifted(value, first, second)));
    }

    private static String shifted(String value, double first, double second) {
      StringBuilder shifted = new StringBuilder();
      Matcher number = NUMBER.matcher(value);
      for (boolean isFirst = true; number.find(); isFirst = !isFirst) {
        double moved = Double.parseDouble(number.group()) + (isFirst ? first : second);
        number.appendReplacement(shifted, Decimal.of(moved, DIGITS));
      }
      return number.appendTail(shifted).toString();
    }
  }

  static TomlDraft of(String text) {
    List<Part> parts = new ArrayList<>();
    for (String line : text.lines().toList()) {
      if (line.startsWith("[")) {
        parts.add(new Part(line, new ArrayList<>()));
      } else {
        parts.get(parts.size() - 1).lines().add(line);
      }
    }
    return new TomlDraft(parts);
  }

  /** The tables of a name. */
  List<Part> parts(String table) {
    return parts.stream().filter(part -> part.table().equals(table)).toList();
  }

  /** The table of a name that is the first such one, or that stands within it. */
  Part partOf(String table, Predicate<Part> isMeant) {
    Part outer = parts.stream().filter(isMeant).findFirst().orElseThrow();
    return outer.table().equals(table)
        ? outer
        : parts.stream()
            .skip(parts.indexOf(outer))
            .filter(part -> part.table().equals(table))
            .findFirst()
            .orElseThrow();
  }

  /** The table of a name, a new one at the end where there is none. */
  Part part(String table) {
    if (parts(table).isEmpty()) {
      parts.add(new Part(table, new ArrayList<>()));
    }
    return parts(table).get(0);
  }

  String text() {
    return parts.stream()
        .map(part -> part.table() + "\n" + String.join("\n", part.lines()) + "\n")
        .collect(Collectors.joining());
  }
}
