package plycrag.app;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import plycrag.book.SettingOut;

/** Tells why the inserts of walls are where they are, and writes nothing. */
@Command(
    name = "explain",
    mixinStandardHelpOptions = true,
    description =
        "Tells what was asked of the pattern, what stood in the way, what was moved and by how"
            + " much; writes nothing.")
final class ExplainCommand implements Callable<Integer> {

  @Mixin private Sources sources;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    CommandLine line = spec.commandLine();
    return sources.of(spec).stream()
        .map(source -> new Job(source, Optional.empty(), line.getOut(), line.getErr()))
        .mapToInt(job -> job.run((design, inputs) -> print(design, line.getOut())))
        .max()
        .orElse(Exit.WELL);
  }

  private static void print(Design.Judged judged, PrintWriter out) {
    out.println(judged.checked().layout().wall().name());
    for (SettingOut.Told told : SettingOut.of(judged.checked().layout())) {
      out.println("Facet " + told.facet() + ": " + told.summary());
      told.lines().forEach(line -> out.println("  " + line));
    }
  }
}
