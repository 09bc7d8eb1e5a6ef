package plycrag.app;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import plycrag.book.HoleStory;
import plycrag.book.SettingOut;
import plycrag.layout.Layout;

/** Tells why the inserts of walls are where they are, and writes nothing. */
@Command(
    name = "explain",
    mixinStandardHelpOptions = true,
    description =
        "Tells what was asked of the pattern, what stood in the way, what was moved and by how"
            + " much; writes nothing.")
final class ExplainCommand implements Callable<Integer> {

  @Mixin private Sources sources;

  @Option(
      names = "--hole",
      paramLabel = "MARK",
      description =
          "Tells of one hole alone, such as \"main 40/10\": why it is there or missing, what stands"
              + " nearest, what would free it.")
  private String hole;

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

  private void print(Design.Judged judged, PrintWriter out) {
    Layout layout = judged.checked().layout();
    out.println(layout.wall().name());
    if (hole != null) {
      printHole(layout, out);
      return;
    }
    for (SettingOut.Told told : SettingOut.of(layout)) {
      out.println("Facet " + told.facet() + ": " + told.summary());
      told.lines().forEach(line -> out.println("  " + line));
    }
  }

  private void printHole(Layout layout, PrintWriter out) {
    List<String> told = HoleStory.of(layout, hole);
    told.forEach(out::println);
    if (told.isEmpty()) {
      String nearest =
          HoleStory.nearestFacet(layout, hole)
              .map(facet -> "; the nearest facet is " + facet)
              .orElse("");
      throw new ParameterException(
          spec.commandLine(),
          hole + " is no hole's mark" + nearest + "; one such as \"main 40/10\" is allowed");
    }
  }
}
