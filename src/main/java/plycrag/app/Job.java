package plycrag.app;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ParameterException;
import plycrag.files.OutputFile;
import plycrag.files.OutputFolder;
import plycrag.files.OutputFolderException;
import plycrag.finding.FindingLine;
import plycrag.units.Count;

/** One parameter file, with what it names, on its way through the house. */
final class Job {
  /** More lines of findings than this are read in the list rather than on a terminal. */
  private static final int MOST = 10;

  private final Source source;
  private final Optional<Path> parent;
  private final FolderPart part;
  private final PrintWriter out;
  private final PrintWriter err;
  private final Progress progress;

  private Job(Source source, Optional<Path> parent, FolderPart part, Terminal terminal) {
    this.source = source;
    this.parent = parent;
    this.part = part;
    this.out = terminal.out();
    this.err = terminal.err();
    this.progress = new Progress(terminal);
  }

  /** A file that has not been read yet, and of which nothing is written. */
  static Job checking(Source source, Terminal terminal) {
    return new Job(source, Optional.empty(), FolderPart.whole(), terminal);
  }

  /**
   * A file that has not been read yet.
   *
   * @param parent where its folder goes
   * @param part what of it is written
   */
  static Job building(Source source, Path parent, FolderPart part, Terminal terminal) {
    return new Job(source, Optional.of(parent), part, terminal);
  }

  /** What is done with a wall that was judged. */
  interface Ending {
    /** Does it. */
    void take(Design.Judged design, Inputs inputs) throws OutputFolderException, Unwritten;
  }

  /**
   * Tells what was found, and writes the folder if there is to be one; the exit code. A defect of
   * ours is told and does not stop the files after this one.
   */
  int run() {
    return run(this::finish);
  }

  /** Does something else with the wall, then sums it up; the exit code. */
  int run(Ending ending) {
    try {
      Inputs inputs = Inputs.of(source);
      Design design = progress.during("Laying out " + source.name(), inputs::design);
      if (design instanceof Design.Judged judged) {
        ending.take(judged, inputs);
        new Summary(judged.checked()).print(out);
        return judged.checked().isApproved() ? Exit.WELL : Exit.ERROR_FINDINGS;
      }
      ((Design.Unreadable) design).findings().forEach(one -> err.println(FindingLine.of(one)));
      return Exit.WRONG_INPUT;
    } catch (Source.SourceException | OutputFolderException | Unwritten e) {
      err.println(e.getMessage());
      return Exit.FILES;
    } catch (ParameterException e) {
      throw e;
    } catch (RuntimeException | Error e) {
      return Defect.tell(source.path().toString(), e, err);
    }
  }

  private void finish(Design.Judged design, Inputs inputs) throws OutputFolderException, Unwritten {
    new Summary(design.checked())
        .printFindings(
            err, source.path().toString(), parent.isPresent() ? MOST : Integer.MAX_VALUE);
    if (parent.isPresent()) {
      write(design, inputs, parent.get().resolve(source.stem() + (part.isWhole() ? "" : "-part")));
    } else {
      out.println(Bill.of(design).words(design.checked().layout()));
    }
  }

  private void write(Design.Judged design, Inputs inputs, Path folder)
      throws OutputFolderException, Unwritten {
    List<OutputFile> files =
        new ArrayList<>(
            progress.during(
                "Drawing " + source.name(), () -> Release.of(Deliverable.of(design, part))));
    inputs.copies().stream().filter(copy -> part.takes(copy.path())).forEach(files::add);
    if (!part.isWhole()) {
      files = noted(files, design, folder);
    }
    new OutputFolder(folder).replace(inputs.origin(), files);
    out.println(
        "Wrote "
            + Count.of(files.size() + 1, "file")
            + " to "
            + folder
            + (part.isWhole() ? "; open " + folder.resolve("index.html") : "")
            + ".");
  }

  /** With what says that it is a part, and never over what is whole. */
  private List<OutputFile> noted(List<OutputFile> files, Design.Judged design, Path folder)
      throws Unwritten {
    String wall = design.checked().layout().wall().name();
    if (part.unknown(files).isPresent()) {
      throw Unwritten.because(
          folder + ": nothing of " + wall + " is called " + part.unknown(files).get());
    }
    if (Files.exists(folder) && !Files.exists(folder.resolve(FolderPart.NOTE))) {
      throw Unwritten.because(folder + " holds a whole wall; it is left as it is");
    }
    List<OutputFile> all = new ArrayList<>(files);
    all.add(part.note(wall));
    return all;
  }
}
