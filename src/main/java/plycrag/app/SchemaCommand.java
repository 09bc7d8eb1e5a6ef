package plycrag.app;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import plycrag.read.ParameterSchema;

/** Prints by what an editor completes and checks parameter files. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    description =
        "Prints the JSON Schema of parameter files, by which editors complete and check them.")
final class SchemaCommand implements Runnable {

  @Spec private CommandSpec spec;

  @Override
  public void run() {
    Terminal.of(spec).out().print(ParameterSchema.json());
    Terminal.of(spec).out().flush();
  }
}
