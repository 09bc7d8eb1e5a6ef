package plycrag.app;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plycrag.finding.Finding;
import plycrag.read.ParameterFile;

/**
 * A starter's text, in which values are replaced and nothing else.
 *
 * @param text of the file
 */
record StarterText(String text) {
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");

  /** The same with another value where a key stands first, as a person types it. */
  StarterText with(String key, String typed) {
    Matcher line = line(key, "[^#\n]*?");
    if (!line.find()) {
      throw new IllegalArgumentException("a starter without " + key);
    }
    return replaced(line, toml(typed));
  }

  /** The remark behind stays where it is if there is room. */
  private StarterText replaced(Matcher line, String value) {
    String rest = text.substring(line.end(1));
    int longer = value.length() - (line.end(1) - line.start(1));
    int spaces = rest.length() - rest.stripLeading().length();
    boolean isRemark = rest.startsWith("#", spaces);
    String kept =
        isRemark ? " ".repeat(Math.max(1, spaces - longer)) + rest.substring(spaces) : rest;
    return new StarterText(text.substring(0, line.start(1)) + value + kept);
  }

  /** The same with another angle wherever the facet main has its own. */
  StarterText withAngle(String typed) {
    Matcher line = Pattern.compile("name = \"main\".*\nangle = (-?[0-9]+)").matcher(text);
    if (!line.find()) {
      throw new IllegalArgumentException("a starter without a facet main");
    }
    String lines = line("angle", Pattern.quote(line.group(1))).pattern().pattern();
    return new StarterText(
        Pattern.compile(lines, Pattern.MULTILINE)
            .matcher(text)
            .replaceAll(Matcher.quoteReplacement("angle = " + toml(typed))));
  }

  /** What is wrong with the file now, told first; empty if nothing is. */
  Optional<String> wrong() {
    List<Finding> findings =
        ParameterFile.read("wall", text.getBytes(StandardCharsets.UTF_8)).findings();
    return findings.stream().findFirst().map(one -> one.rule() + ": " + one.sentence());
  }

  private Matcher line(String key, String value) {
    return Pattern.compile("^" + key + " = (" + value + ")(?=\\s*(?:#|$))", Pattern.MULTILINE)
        .matcher(text);
  }

  private static String toml(String typed) {
    String plain = typed.strip();
    return NUMBER.matcher(plain).matches()
        ? plain
        : '"' + plain.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
