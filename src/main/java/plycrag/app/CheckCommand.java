package plycrag.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Judges walls and writes nothing. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Lays walls out and judges them; same findings and codes, writes nothing.")
final class CheckCommand implements Callable<Integer> {

  @Parameters(arity = "1..*", paramLabel = "FILE", description = "Parameter files.")
  private List<Path> files;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    CommandLine line = spec.commandLine();
    return files.stream()
        .map(file -> new Job(new Source(file), Optional.empty(), line.getOut(), line.getErr()))
        .mapToInt(Job::run)
        .max()
        .orElse(Exit.WELL);
  }
}
