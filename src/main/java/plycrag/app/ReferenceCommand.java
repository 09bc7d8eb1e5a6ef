package plycrag.app;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import plycrag.read.ReferencePage;

/** Prints what a parameter file may say. */
@Command(
    name = "reference",
    mixinStandardHelpOptions = true,
    description = "Prints every parameter with its range and default, as Markdown.")
final class ReferenceCommand implements Runnable {

  @Spec private CommandSpec spec;

  @Override
  public void run() {
    spec.commandLine().getOut().print(ReferencePage.markdown());
    spec.commandLine().getOut().flush();
  }
}
