package plycrag.app;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
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

  @Option(
      names = "--only",
      paramLabel = "NAME",
      split = ",",
      description =
          "Makes a part, into DIR/<its name>-part: folders, files or sheets, such as drawings,S2.")
  private List<String> only = List.of();

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    List<Source> named = sources.of(spec);
    requireDistinct(named);
    FolderPart part = new FolderPart(only);
    return named.stream()
        .map(source -> Job.building(source, parent, part, sources.terminal(spec)))
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
