package plycrag.app;

import java.io.PrintWriter;
import java.util.List;
import plycrag.book.Cautions;
import plycrag.check.CheckedLayout;
import plycrag.finding.Finding;
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
        "Not checked: " + Cautions.notChecked(layout).size() + " things; the book names them.");
  }

  /** The findings, errors first, one a line, at most so many. */
  void printFindings(PrintWriter err, int most) {
    List<Finding> findings = checked.findings();
    findings.stream().limit(most).map(FindingLine::of).forEach(err::println);
    if (findings.size() > most) {
      err.println("and " + (findings.size() - most) + " more in checks/clearance.csv");
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
