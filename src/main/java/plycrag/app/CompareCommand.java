package plycrag.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Sets two walls side by side. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description =
        "Sets two walls side by side: figures, costs, and what of the shopping list differs; a"
            + " folder that was built stands for the inputs that it keeps. Writes nothing.")
final class CompareCommand implements Callable<Integer> {

  @Parameters(
      index = "0",
      paramLabel = "A",
      description = "A parameter file, or a folder that was built.")
  private Path one;

  @Parameters(index = "1", paramLabel = "B", description = "Another wall, likewise.")
  private Path other;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    if (Source.isStandardInput(one) && Source.isStandardInput(other)) {
      throw new ParameterException(spec.commandLine(), "standard input can be read once only");
    }
    Terminal terminal = Terminal.of(spec);
    List<Design.Judged> walls = new ArrayList<>();
    int code = Exit.WELL;
    for (Path path : List.of(one, other)) {
      Job job = Job.checking(source(path, terminal), terminal.quiet());
      code = Math.max(code, job.run((design, inputs) -> walls.add(design)));
    }
    if (walls.size() == 2) {
      Comparison comparison = new Comparison(walls.get(0), walls.get(1));
      comparison.lines().forEach(terminal.out()::println);
    }
    return code;
  }

  private static Source source(Path path, Terminal terminal) {
    return Files.isDirectory(path)
        ? new BuiltFolder(path).parameters()
        : Source.named(path, terminal.in());
  }
}
