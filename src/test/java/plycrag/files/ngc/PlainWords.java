package plycrag.files.ngc;

import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A program for a larger controller in the words of a small one, for {@link NgcReader}: what stands
 * around the moves is left out, arcs become straight cuts to their ends.
 */
public final class PlainWords {
  private static final Pattern AROUND =
      Pattern.compile("%|O[0-9]+|G40 G49 G80|T[0-9]+ M6|G43 H[0-9]+|M0|M[789]");

  private PlainWords() {}

  /** The program's text. */
  public static String of(String text) {
    return text.lines()
            .filter(line -> !AROUND.matcher(line).matches())
            .map(line -> line.startsWith("(") ? line : plain(line))
            .collect(Collectors.joining("\n"))
        + "\n";
  }

  private static String plain(String line) {
    return line.replaceFirst("^G[23] ", "G1 ")
        .replaceAll(" [IJ]-?[0-9.]+", "")
        .replaceFirst("G5[5-9]$", "G54");
  }
}
