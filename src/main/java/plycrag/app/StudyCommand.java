package plycrag.app;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import plycrag.files.OutputFolder;
import plycrag.files.OutputFolderException;

/** Tries many variants of a wall. */
@Command(
    name = "study",
    mixinStandardHelpOptions = true,
    description =
        "Tries all values of one key or several, each with each, and makes a table, a page and two"
            + " plots of what comes of them in DIR/<its name>-study.")
final class StudyCommand implements Callable<Integer> {
  private static final int MOST = 10_000;

  @Parameters(paramLabel = "FILE", description = "A parameter file; - reads standard input.")
  private Path file;

  @Option(
      names = "--vary",
      required = true,
      paramLabel = "KEY=FROM:TO:STEP",
      description = "Such as facet.angle=20:40:5, in the file's unit; may stand several times.")
  private List<String> vary;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "out",
      description = "Where the folder goes; ${DEFAULT-VALUE} by default.")
  private Path parent;

  @Mixin private Quiet quiet;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    List<Vary> keys = keys();
    int count = keys.stream().mapToInt(key -> key.values().size()).reduce(1, Math::multiplyExact);
    if (count > MOST) {
      throw new ParameterException(
          spec.commandLine(), count + " variants are more than " + MOST + "; take larger steps");
    }
    Terminal terminal = quiet.terminal(spec);
    Source source = Source.named(file, terminal.in());
    try {
      byte[] content = source.bytes();
      Inputs inputs = Inputs.of(new Source(source.path(), () -> content));
      String text = new String(content, StandardCharsets.UTF_8);
      AtomicInteger done = new AtomicInteger();
      Study study =
          new Progress(terminal)
              .during(
                  "Trying variants of " + source.name(),
                  () -> Study.of(source, text, keys, done),
                  count,
                  done::get);
      return write(study, inputs, parent.resolve(source.stem() + "-study"), terminal);
    } catch (Source.SourceException | OutputFolderException e) {
      terminal.err().println(e.getMessage());
      return Exit.FILES;
    }
  }

  private List<Vary> keys() {
    try {
      return vary.stream().map(Vary::of).toList();
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage(), e);
    }
  }

  /** Where no variant is a wall at all, the first fault is told and nothing is written. */
  private static int write(Study study, Inputs inputs, Path folder, Terminal terminal)
      throws OutputFolderException {
    if (study.variants().stream().allMatch(one -> one.tally().isEmpty())) {
      terminal.err().println(study.wall() + ": " + study.variants().get(0).fault());
      return Exit.WRONG_INPUT;
    }
    new OutputFolder(folder).replace(inputs.origin(), study.files());
    terminal.out().println(study.summary());
    terminal.out().println("Wrote " + folder + "; open " + folder.resolve("index.html") + ".");
    return Exit.WELL;
  }
}
