package plycrag.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import plycrag.book.SettingOut;
import plycrag.finding.FindingLine;

/** Tells why the inserts of walls are where they are, and writes nothing. */
@Command(
    name = "explain",
    mixinStandardHelpOptions = true,
    description =
        "Tells what was asked of the pattern, what stood in the way, what was moved and by how"
            + " much; writes nothing.")
final class ExplainCommand implements Callable<Integer> {

  @Parameters(arity = "1..*", paramLabel = "FILE", description = "Parameter files.")
  private List<Path> files;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    return files.stream().map(Source::new).mapToInt(this::explain).max().orElse(Exit.WELL);
  }

  private int explain(Source source) {
    CommandLine line = spec.commandLine();
    try {
      Design design = Inputs.of(source).design();
      if (design instanceof Design.Judged judged) {
        print(judged, line.getOut());
        return judged.checked().isApproved() ? Exit.WELL : Exit.ERROR_FINDINGS;
      }
      ((Design.Unreadable) design)
          .findings()
          .forEach(one -> line.getErr().println(FindingLine.of(one)));
      return Exit.WRONG_INPUT;
    } catch (Source.SourceException e) {
      line.getErr().println(e.getMessage());
      return Exit.FILES;
    }
  }

  private static void print(Design.Judged judged, PrintWriter out) {
    out.println(judged.checked().layout().wall().name());
    for (SettingOut.Told told : SettingOut.of(judged.checked().layout())) {
      out.println("Facet " + told.facet() + ": " + told.summary());
      told.lines().forEach(line -> out.println("  " + line));
    }
    new Summary(judged.checked()).print(out);
  }
}
