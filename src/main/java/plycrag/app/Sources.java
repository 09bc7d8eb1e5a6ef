package plycrag.app;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** The parameter files that a verb takes. */
final class Sources {
  @Parameters(
      arity = "1..*",
      paramLabel = "FILE",
      description = "Parameter files; - reads one from standard input.")
  private List<Path> files;

  @Mixin private Quiet quiet;

  /** The files in their order, as the user named them. */
  List<Source> of(CommandSpec verb) {
    if (files.stream().filter(Source::isStandardInput).count() > 1) {
      throw new ParameterException(verb.commandLine(), "standard input can be read once only");
    }
    return files.stream().map(file -> Source.named(file, Terminal.of(verb).in())).toList();
  }

  /** Where a run of the verb reads and writes, silent where that is asked. */
  Terminal terminal(CommandSpec verb) {
    return quiet.terminal(verb);
  }
}
