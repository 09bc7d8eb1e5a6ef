package plycrag.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import plycrag.document.Drawing;
import plycrag.drawing.room.ClimbingView;
import plycrag.files.OutputFile;
import plycrag.files.pdf.PictureWriter;
import plycrag.files.svg.SvgWriter;

/** Makes one picture of a wall. */
@Command(
    name = "view",
    mixinStandardHelpOptions = true,
    description =
        "Makes one picture of the climbing side in its room, with what was found ringed, beside"
            + " each file; over the picture before it.")
final class ViewCommand implements Callable<Integer> {

  @Mixin private Sources sources;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "PICTURE",
      description = "Where it goes instead: a path that ends in .svg or .png.")
  private Path picture;

  @Spec private CommandSpec spec;

  /** What a picture is written as. */
  private enum Format {
    SVG,
    PNG
  }

  @Override
  public Integer call() {
    Optional.ofNullable(picture).ifPresent(this::format);
    if (picture != null && sources.of(spec).size() > 1) {
      throw new ParameterException(spec.commandLine(), "one picture cannot show several files");
    }
    Terminal terminal = sources.terminal(spec);
    return sources.of(spec).stream()
        .mapToInt(
            source ->
                Job.checking(source, terminal)
                    .run((design, inputs) -> show(design, source, terminal)))
        .max()
        .orElse(Exit.WELL);
  }

  private Format format(Path path) {
    String name = String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT);
    if (name.endsWith(".svg")) {
      return Format.SVG;
    }
    if (name.endsWith(".png")) {
      return Format.PNG;
    }
    throw new ParameterException(spec.commandLine(), path + " ends in neither .svg nor .png");
  }

  private void show(Design.Judged design, Source source, Terminal terminal) throws Unwritten {
    new Summary(design.checked()).printNumbered(terminal.err(), source.path().toString());
    Drawing drawing = ClimbingView.of(design.checked());
    Path path =
        Optional.ofNullable(picture)
            .orElseGet(() -> source.path().resolveSibling(source.stem() + ".svg"));
    Unwritten.write(path, content(drawing, format(path)));
    PrintWriter out = terminal.out();
    out.println("Drew " + path + ".");
  }

  private static byte[] content(Drawing drawing, Format format) {
    return switch (format) {
      case SVG -> OutputFile.text("picture.svg", SvgWriter.write(drawing)).content();
      case PNG -> PictureWriter.png(drawing);
    };
  }
}
