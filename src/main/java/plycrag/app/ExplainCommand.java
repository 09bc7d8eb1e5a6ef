package plycrag.app;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
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
    PrintWriter out = Terminal.of(spec).out();
    return sources.of(spec).stream()
        .map(source -> Job.checking(source, sources.terminal(spec)))
        .mapToInt(job -> job.run((design, inputs) -> print(design, out)))
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
