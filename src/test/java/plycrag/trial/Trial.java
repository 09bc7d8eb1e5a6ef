package plycrag.trial;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import plycrag.app.Plycrag;

/**
 * What became of a parameter file.
 *
 * @param exit the exit code
 * @param told what was printed for the user
 */
record Trial(int exit, String told) {
  /** The exit code of a defect of the program. */
  static final int DEFECT = 70;

  static final int ERROR_FINDINGS = 1;
  static final int WRONG_INPUT = 2;

  /** Frames that tell one kind of defect from another. */
  private static final int FRAMES = 2;

  /** Runs a verb on a file's text, in a folder that may be used. */
  static Trial of(String verb, String text, Path folder) {
    StringWriter told = new StringWriter();
    Plycrag program =
        new Plycrag(new PrintWriter(new StringWriter(), true), new PrintWriter(told, true));
    try {
      String file = Files.writeString(folder.resolve("wall.toml"), text).toString();
      int exit =
          verb.equals("build")
              ? program.run(verb, file, "--out", folder.resolve("made").toString())
              : program.run(verb, file);
      return new Trial(exit, told.toString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  boolean isDefect() {
    return exit == DEFECT;
  }

  /** The same for all that fail in one place: the innermost cause and the methods it came from. */
  String kind() {
    List<String> lines = told.lines().toList();
    int cause = 0;
    for (int at = 0; at < lines.size(); at++) {
      if (lines.get(at).matches("(Caused by: )?[a-z]\\w*(\\.\\w+)+(Exception|Error)\\b.*")) {
        cause = at;
      }
    }
    String places =
        lines.subList(cause, lines.size()).stream()
            .filter(line -> line.startsWith("\tat plycrag."))
            .map(line -> line.replaceAll("^\tat |\\(.*", ""))
            .limit(FRAMES)
            .collect(Collectors.joining(", "));
    String message = lines.get(cause).replaceAll("-?[0-9]+(\\.[0-9]+)?(E-?[0-9]+)?", "N");
    if (message.endsWith("self-check:") && cause + 1 < lines.size()) {
      message += " " + lines.get(cause + 1).replaceAll("[0-9]+(\\.[0-9]+)?", "N");
    }
    return message.substring(0, Math.min(message.length(), 160)) + " [" + places + "]";
  }
}
