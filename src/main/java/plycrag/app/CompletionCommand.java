package plycrag.app;

import java.util.Locale;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import plycrag.app.shell.CompletedVerb;
import plycrag.app.shell.FishCompletion;
import plycrag.app.shell.ZshCompletion;

/** Prints what makes a shell complete verbs and options. */
@Command(
    name = "completion",
    mixinStandardHelpOptions = true,
    description = "Prints what makes a shell complete verbs, options and files.",
    footer = {
      "",
      "bash: source <(plycrag completion bash)",
      "zsh:  source <(plycrag completion zsh)",
      "fish: plycrag completion fish | source"
    })
final class CompletionCommand implements Runnable {

  /** A shell that can be taught. */
  enum Shell {
    BASH,
    ZSH,
    FISH;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  @Parameters(paramLabel = "SHELL", description = "One of ${COMPLETION-CANDIDATES}.")
  private Shell shell;

  @Spec private CommandSpec spec;

  @Override
  public void run() {
    Terminal terminal = Terminal.of(spec);
    terminal.out().print(script(spec.root().commandLine()));
    terminal.out().flush();
  }

  private String script(CommandLine line) {
    return switch (shell) {
      case BASH -> AutoComplete.bash(Plycrag.NAME, line).replace("\r\n", "\n");
      case ZSH -> ZshCompletion.script(CompletedVerb.of(line));
      case FISH -> FishCompletion.script(CompletedVerb.of(line));
    };
  }
}
