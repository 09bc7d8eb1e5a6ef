package plycrag.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
  private final PrintWriter out;
  private final PrintWriter err;

  /**
   * A file that has not been read yet.
   *
   * @param source the file
   * @param parent where its folder goes; empty if nothing is to be written
   * @param out results
   * @param err findings
   */
  Job(Source source, Optional<Path> parent, PrintWriter out, PrintWriter err) {
    this.source = source;
    this.parent = parent;
    this.out = out;
    this.err = err;
  }

  /** What is done with a wall that was judged. */
  interface Ending {
    /** Does it. */
    void take(Design.Judged design, Inputs inputs) throws OutputFolderException;
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
      Design design = inputs.design();
      if (design instanceof Design.Judged judged) {
        ending.take(judged, inputs);
        new Summary(judged.checked()).print(out);
        return judged.checked().isApproved() ? Exit.WELL : Exit.ERROR_FINDINGS;
      }
      ((Design.Unreadable) design).findings().forEach(one -> err.println(FindingLine.of(one)));
      return Exit.WRONG_INPUT;
    } catch (Source.SourceException | OutputFolderException e) {
      err.println(e.getMessage());
      return Exit.FILES;
    } catch (RuntimeException | Error e) {
      return Defect.tell(source.path().toString(), e, err);
    }
  }

  private void finish(Design.Judged design, Inputs inputs) throws OutputFolderException {
    new Summary(design.checked())
        .printFindings(
            err, source.path().toString(), parent.isPresent() ? MOST : Integer.MAX_VALUE);
    if (parent.isPresent()) {
      write(design, inputs, parent.get().resolve(source.stem()));
    }
  }

  private void write(Design.Judged design, Inputs inputs, Path folder)
      throws OutputFolderException {
    List<OutputFile> files = Release.of(Deliverable.of(design));
    new OutputFolder(folder).replace(inputs.origin(), files);
    out.println(
        "Wrote "
            + Count.of(files.size() + 1, "file")
            + " to "
            + folder
            + "; open "
            + folder.resolve("index.html")
            + ".");
  }
}
