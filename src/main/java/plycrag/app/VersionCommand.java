package plycrag.app;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints the program's version, as {@code --version} does. */
@Command(
    name = "version",
    mixinStandardHelpOptions = true,
    description = "Prints the program's version.")
final class VersionCommand implements Runnable {

  @Spec private CommandSpec spec;

  @Override
  public void run() {
    Terminal.of(spec).out().println(Plycrag.NAME + " " + Version.number());
  }
}
