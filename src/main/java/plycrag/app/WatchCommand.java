package plycrag.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import plycrag.app.watch.PageServer;

/** Shows a wall while it is being written. */
@Command(
    name = "watch",
    mixinStandardHelpOptions = true,
    description =
        "Shows a wall in the browser while its file is being written: whenever the file or a list"
            + " that it names is saved, the open page changes. Writes nothing; Ctrl-C ends it.")
final class WatchCommand implements Callable<Integer> {
  private static final int LAST_PORT = 65_535;

  @Parameters(paramLabel = "FILE", description = "A parameter file.")
  private Path file;

  @Option(
      names = "--port",
      paramLabel = "PORT",
      defaultValue = "0",
      description = "Where the page is served on this machine; any that is free by default.")
  private int port;

  @Mixin private Quiet quiet;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    if (Source.isStandardInput(file)) {
      throw new ParameterException(
          spec.commandLine(), "standard input is read once; watch wants a file that is saved");
    }
    if (port < 0 || port > LAST_PORT) {
      throw new ParameterException(
          spec.commandLine(), "--port is a number from 0 to " + LAST_PORT + ", not " + port);
    }
    Terminal terminal = quiet.terminal(spec);
    Source source = new Source(file);
    try (PageServer server = new PageServer(source.name(), port)) {
      Runtime.getRuntime().addShutdownHook(new Thread(server::close));
      Terminal.of(spec)
          .out()
          .println("Open " + server.address() + " in a browser; Ctrl-C ends it.");
      new Watching(source, server, terminal).untilInterrupted();
      return Exit.WELL;
    } catch (IOException e) {
      terminal.err().println("port " + port + " could not be opened: " + e.getMessage());
      return Exit.FILES;
    }
  }
}
