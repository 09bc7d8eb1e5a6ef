package plycrag.app;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line. */
@Command(
    name = Plycrag.NAME,
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Makes drawings, programs and lists for a bouldering wall from one parameter file.",
    subcommands = {
      BuildCommand.class,
      CheckCommand.class,
      ExplainCommand.class,
      ReferenceCommand.class
    },
    footer = {
      "",
      "Exit codes: 0 all well; 1 error findings; 2 the parameter file or the usage is wrong;",
      "3 files could not be read or written; 70 a defect of the program."
    })
public final class Plycrag implements Runnable {
  static final String NAME = "plycrag";

  private final PrintWriter out;
  private final PrintWriter err;

  @Spec private CommandSpec spec;

  /**
   * A command line.
   *
   * @param out results
   * @param err findings and usage
   */
  public Plycrag(PrintWriter out, PrintWriter err) {
    this.out = out;
    this.err = err;
  }

  /** Runs a verb; never exits. */
  public int run(String... arguments) {
    CommandLine line = new CommandLine(this);
    line.setOut(out);
    line.setErr(err);
    line.setParameterExceptionHandler(new Usage());
    line.setExecutionExceptionHandler(
        (cause, verb, parsed) -> Defect.tell(NAME, cause, verb.getErr()));
    try {
      return line.execute(arguments);
    } catch (Error error) {
      return Defect.tell(NAME, error, err);
    }
  }

  @Override
  public void run() {
    throw new CommandLine.ParameterException(spec.commandLine(), "a verb is missing");
  }
}
