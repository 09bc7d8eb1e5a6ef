package plycrag.app;

import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.check.Inspection;
import plycrag.finding.Finding;
import plycrag.layout.LayoutPlan;
import plycrag.params.ParameterFile;
import plycrag.params.Parameters;
import plycrag.params.Reading;
import plycrag.wall.Wall;

/** What became of a parameter file: a checked layout, or what is wrong with the file. */
public sealed interface Design {

  /**
   * A file that cannot be read as parameters.
   *
   * @param findings all that is wrong, by line and column
   */
  record Unreadable(List<Finding> findings) implements Design {}

  /**
   * A wall that was laid out and judged.
   *
   * @param parameters what the file says
   * @param checked the verdict
   */
  record Judged(Parameters parameters, CheckedLayout checked) implements Design {}

  /** Reads, lays out and judges a file. */
  static Design of(String fileName, byte[] content) {
    Reading reading = ParameterFile.read(fileName, content);
    if (reading.parameters().isEmpty()) {
      return new Unreadable(reading.findings());
    }
    Parameters parameters = reading.parameters().get();
    CheckedLayout checked = Inspection.of(LayoutPlan.of(Wall.of(parameters)));
    return new Judged(parameters, checked);
  }
}
