package plycrag.app;

import java.io.PrintWriter;
import java.util.List;
import plycrag.book.Cautions;
import plycrag.check.CheckedLayout;
import plycrag.finding.FindingGroup;
import plycrag.finding.FindingLine;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.units.Count;

/** Tells in a few lines what was made of a wall. */
final class Summary {
  private final CheckedLayout checked;

  Summary(CheckedLayout checked) {
    this.checked = checked;
  }

  /** What the wall takes, and what was found. */
  void print(PrintWriter out) {
    Layout layout = checked.layout();
    out.println(layout.wall().name() + ": " + counts(layout) + ".");
    out.println(verdict());
    out.println(
        "Not checked: " + Cautions.notChecked(checked).size() + " things; the book names them.");
  }

  /**
   * The findings, errors first, equal ones on one line, at most so many lines.
   *
   * @param file whose wall it is, as the user named it
   */
  void printFindings(PrintWriter err, String file, int most) {
    List<FindingGroup> groups = checked.groups();
    groups.stream().limit(most).map(group -> FindingLine.of(file, group)).forEach(err::println);
    int more = groups.stream().skip(most).mapToInt(group -> group.findings().size()).sum();
    if (more > 0) {
      err.println(file + ": and " + more + " more in checks/clearance.csv");
    }
  }

  /** All findings, equal ones under one number, as pictures repeat it. */
  void printNumbered(PrintWriter err, String file) {
    List<FindingGroup> groups = checked.groups();
    for (int at = 0; at < groups.size(); at++) {
      err.println((at + 1) + ". " + FindingLine.of(file, groups.get(at)));
    }
  }

  private static String counts(Layout layout) {
    return Count.of(layout.sheets().size(), "sheet")
        + ", "
        + Count.of(layout.members().size(), "member")
        + ", "
        + Count.of(layout.inserts().size(), "insert")
        + ", "
        + Count.of(layout.screws().size(), "screw");
  }

  private String verdict() {
    String findings =
        Count.of(checked.findings(Severity.ERROR).size(), "error")
            + ", "
            + Count.of(checked.findings(Severity.WARNING).size(), "warning");
    return checked.isApproved()
        ? "Checked: " + findings + "."
        : "Not for making: " + findings + "; no program was written.";
  }
}
