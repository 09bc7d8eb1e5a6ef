package plycrag.app;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Makes a folder of drawings, programs and lists for each wall. */
@Command(
    name = "build",
    mixinStandardHelpOptions = true,
    description = "Makes a folder of drawings, programs and lists for each wall.")
final class BuildCommand implements Callable<Integer> {

  @Mixin private Sources sources;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "out",
      description = "Each file makes DIR/<its name>; ${DEFAULT-VALUE} by default.")
  private Path parent;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    List<Source> named = sources.of(spec);
    requireDistinct(named);
    CommandLine line = spec.commandLine();
    return named.stream()
        .map(source -> new Job(source, Optional.of(parent), line.getOut(), line.getErr()))
        .mapToInt(Job::run)
        .max()
        .orElse(Exit.WELL);
  }

  private void requireDistinct(List<Source> named) {
    Set<String> taken = new HashSet<>();
    for (Source source : named) {
      if (!taken.add(source.stem().toLowerCase(Locale.ROOT))) {
        throw new ParameterException(
            spec.commandLine(), "two files would both make " + parent.resolve(source.stem()));
      }
    }
  }
}
