package plycrag.app;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line. */
@Command(
    name = Plycrag.NAME,
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Makes drawings, programs and lists for a bouldering wall from one parameter file.",
    synopsisSubcommandLabel = "VERB",
    commandListHeading = "%nVerbs:%n",
    subcommands = {
      NewCommand.class,
      ViewCommand.class,
      WatchCommand.class,
      CheckCommand.class,
      BuildCommand.class,
      ExplainCommand.class,
      CompareCommand.class,
      StudyCommand.class,
      ReferenceCommand.class,
      SchemaCommand.class,
      CompletionCommand.class,
      VersionCommand.class,
      HelpCommand.class
    },
    footer = {
      "",
      "Start with: plycrag new attic, then plycrag view attic.toml",
      "",
      "Exit codes: 0 all well; 1 error findings; 2 the parameter file or the usage is wrong;",
      "3 files could not be read or written; 70 a defect of the program."
    })
public final class Plycrag implements Runnable, Terminal.Held {
  static final String NAME = "plycrag";

  private final Terminal terminal;

  @Spec private CommandSpec spec;

  /**
   * A command line at which nobody sits.
   *
   * @param out results
   * @param err findings and usage
   */
  public Plycrag(PrintWriter out, PrintWriter err) {
    this(Terminal.unattended(out, err));
  }

  /** A command line that reads and writes there. */
  Plycrag(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Terminal terminal() {
    return terminal;
  }

  /** Runs a verb; never exits. */
  public int run(String... arguments) {
    CommandLine line = line();
    line.setOut(terminal.out());
    line.setErr(terminal.err());
    line.setParameterExceptionHandler(new Usage());
    line.setExecutionExceptionHandler(
        (cause, verb, parsed) -> Defect.tell(NAME, cause, verb.getErr()));
    try {
      return line.execute(arguments);
    } catch (Error error) {
      return Defect.tell(NAME, error, terminal.err());
    }
  }

  /** All verbs with what they take. */
  CommandLine line() {
    return new CommandLine(this).setCaseInsensitiveEnumValuesAllowed(true);
  }

  @Override
  public void run() {
    throw new Usage.NoVerb(spec.commandLine());
  }
}
