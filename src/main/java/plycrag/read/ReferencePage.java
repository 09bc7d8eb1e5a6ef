package plycrag.read;

import java.util.List;
import java.util.stream.Collectors;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.TableSpec;
import plycrag.units.LengthUnit;

/** The reference of all parameters as a page of Markdown, made from their declarations. */
public final class ReferencePage {
  private static final String START =
      """
      # Parameters

      A wall is described in one TOML file. This page lists every key that it may hold.

      - A length is a bare number in the file's unit (`[wall] unit`), or a text with its own unit:
        `"2.4 m"`, `"18 mm"`, `"3/4 in"`, `"8 ft 2 1/2 in"`. The decimal sign is a point.
      - A feed is a length per minute: a bare number, or a text such as `"600 mm/min"`.
      - Every key may be left out; its default then holds. Where two are given, the first is for files
        in millimetres and the second for files in inches. One `[[facet]]` is needed.

      The shortest useful file:

      ```toml
      [wall]
      name = "River bay"
      raise = 300

      [[facet]]
      angle = 30
      length = 2400
      width = 2400
      ```
      """;

  private ReferencePage() {}

  /** The page; lines end with LF. */
  public static String markdown() {
    return START
        + ParameterTable.TABLES.stream().map(ReferencePage::section).collect(Collectors.joining());
  }

  private static String section(TableSpec table) {
    return "\n## "
        + table.header()
        + "\n\n"
        + table.meaning()
        + "\n\n| key | meaning | allowed | default |\n|---|---|---|---|\n"
        + table.parameters().stream().map(ReferencePage::row).collect(Collectors.joining())
        + table.inner().stream()
            .map(inner -> "\n### " + table.header(inner) + "\n\n" + inner.meaning() + "\n")
            .collect(Collectors.joining());
  }

  private static String row(Parameter<?> parameter) {
    return "| `"
        + parameter.key()
        + "` | "
        + parameter.meaning()
        + " | "
        + parameter.kind().allowed(List.of(LengthUnit.values()))
        + " | "
        + parameter.standard().words()
        + " |\n";
  }
}
