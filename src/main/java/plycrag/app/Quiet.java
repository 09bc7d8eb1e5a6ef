package plycrag.app;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** What a verb does not say where nobody wants to read it. */
final class Quiet {
  @Option(
      names = {"-q", "--quiet"},
      description = "Findings only, no summary.")
  private boolean isQuiet;

  /** Where a run of the verb reads and writes, silent where that is asked. */
  Terminal terminal(CommandSpec verb) {
    return isQuiet ? Terminal.of(verb).quiet() : Terminal.of(verb);
  }
}
