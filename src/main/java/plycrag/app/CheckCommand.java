package plycrag.app;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Judges walls and writes nothing. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Lays walls out and judges them; same findings and codes, writes nothing.")
final class CheckCommand implements Callable<Integer> {

  @Mixin private Sources sources;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    return sources.of(spec).stream()
        .map(source -> Job.checking(source, sources.terminal(spec)))
        .mapToInt(Job::run)
        .max()
        .orElse(Exit.WELL);
  }
}
