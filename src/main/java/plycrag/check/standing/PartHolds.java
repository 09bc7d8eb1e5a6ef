package plycrag.check.standing;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Cure;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.support.SupportPart;
import plycrag.solve.support.Unheld;
import plycrag.units.Tape;
import plycrag.wall.GivenWall.FoldEdges;
import plycrag.wall.room.GivenSupport;
import plycrag.wall.room.GivenSupport.Kind;
import plycrag.wall.room.GivenSupport.Lateral;

/** Whether one part of a support holds its facets, and does not sway. */
final class PartHolds {
  private final PartReport report;
  private final Layout layout;
  private final SupportPart part;
  private final GivenSupport asked;
  private final String sheets;
  private final List<Finding> findings = new ArrayList<>();

  /**
   * @param rule that finds
   */
  PartHolds(String rule, Layout layout, SupportPart part) {
    this.report = PartReport.of(rule, layout, part);
    this.layout = layout;
    this.part = part;
    this.asked = part.asked();
    this.sheets = report.cure("lateral", "sheets");
  }

  List<Finding> findings() {
    if (asked.needsFoot() && !report.stands()) {
      foot();
      return findings;
    }
    boolean unknown = asked.kind() == Kind.HUNG && !layout.wall().room().ceiling().isTold();
    if (!unknown) {
      unheld();
      unmet();
    }
    sway();
    if (part.sways()) {
      narrow(asked.bracing().lateral());
    }
    apart();
    hinge();
    return findings;
  }

  private void foot() {
    String facet = report.facet();
    String what = asked.kind() == Kind.HINGED ? "a hinge" : "a support on posts";
    findings.add(
        report.plain(
            Severity.ERROR,
            "facet "
                + facet
                + " stands on a facet that is held another way, and "
                + what
                + " holds all from the floor up",
            "let it hold the facets below too, or fix facet "
                + facet
                + " to a building or hang it ("
                + report.key("kind")
                + ")"));
  }

  private void unheld() {
    for (Unheld unheld : part.unheld()) {
      HeldEdge edge = HeldEdge.of(unheld, part, report, layout);
      WholeWall whole = new WholeWall(report.rule(), Severity.ERROR);
      findings.add(
          edge.measure()
              .map(
                  measure ->
                      whole.finding(
                          unheld.facet(), "", measure, edge.sentence(), edge.suggestion()))
              .orElseGet(() -> whole.finding(edge.sentence(), edge.suggestion())));
    }
  }

  private void unmet() {
    for (String facet : part.unmet()) {
      findings.add(
          report.plain(
              Severity.ERROR,
              "facet " + facet + " has no timber where the support is to end on it",
              "supports end on studs that reach the upper edge, and are 500 mm long or more where that"
                  + " slants: give the facet such an edge ([[facet]] outline), or hold it another way"
                  + " ("
                  + report.key("kind")
                  + ")"));
    }
  }

  private void sway() {
    if (asked.bracing().lateral() == Lateral.NONE) {
      findings.add(
          report.named(
              Severity.ERROR,
              "nothing keeps the support from swaying along the wall",
              swingsOnPosts()
                  ? "let braces do it " + braces()
                  : "let the sheets do it "
                      + sheets
                      + ", or braces ("
                      + report.key("lateral")
                      + ")"));
    }
    if (swingsOnPosts()) {
      besideHinges();
    }
    if (isBraced() && !asked.hasPosts()) {
      findings.add(
          report.named(
              Severity.ERROR,
              "braces are asked for where there are no posts",
              "let the sheets keep it from swaying " + sheets));
    }
  }

  /** What moves stiffens no posts, and where these are braced from behind knee braces end too. */
  private void besideHinges() {
    Lateral lateral = asked.bracing().lateral();
    if (lateral == Lateral.SHEETS || lateral == Lateral.KNEE_BRACES) {
      String what =
          lateral == Lateral.SHEETS
              ? "sheets that swing keep no posts from swaying along the wall"
              : "knee braces find no place on the posts of a hinged wall, which are braced from"
                  + " behind";
      findings.add(report.named(Severity.ERROR, what, "let braces do it " + braces()));
    }
  }

  /** Whether what its posts hold moves, so that its sheets stiffen none of them. */
  private boolean swingsOnPosts() {
    return asked.kind() == Kind.HINGED && asked.hasPosts();
  }

  private String braces() {
    return report.cure("lateral", "braces");
  }

  private boolean isBraced() {
    Lateral lateral = asked.bracing().lateral();
    return lateral == Lateral.BRACES || lateral == Lateral.KNEE_BRACES;
  }

  private void narrow(Lateral lateral) {
    String knees =
        "let braces do it "
            + braces()
            + ", or set the posts further apart ("
            + report.key("bay")
            + ")";
    findings.add(
        report.named(
            Severity.ERROR,
            "there is no room between the posts for what keeps them from swaying along the wall",
            lateral == Lateral.KNEE_BRACES ? knees : widerOrSheets()));
  }

  private String widerOrSheets() {
    return swingsOnPosts()
        ? "make the wall wide enough for two posts, further apart (" + report.key("bay") + ")"
        : "let the sheets do it " + sheets + ", or make the wall wide enough for two posts";
  }

  private void apart() {
    double widest = part.widestBay();
    if (widest > asked.bay() + Tolerance.TOUCH) {
      Tape tape = layout.wall().tape();
      findings.add(
          new WholeWall(report.rule(), Severity.WARNING)
              .finding(
                  "",
                  "",
                  new Measure(widest, asked.bay()),
                  "two supports stand "
                      + tape.text(widest)
                      + " apart, and "
                      + tape.text(asked.bay())
                      + " were the most that was asked for",
                  "set the studs closer ([frame] stud-spacing): supports stand where studs do; or"
                      + " allow more ("
                      + report.key("bay")
                      + ")"));
    }
  }

  private void hinge() {
    if (asked.kind() != Kind.HINGED) {
      return;
    }
    if (layout.runs().stream().anyMatch(run -> run.size() < 2) || layout.runs().size() > 1) {
      findings.add(
          report.named(
              Severity.ERROR,
              "a hinged wall has a kick that stands and one facet or more on it, and no wall beside it",
              "give a kick and what swings on it, by themselves"));
    }
    if (layout.wall().foldEdges() == FoldEdges.MITRED) {
      findings.add(
          report.named(
              Severity.ERROR,
              "sheets and timber that are mitred to one angle bind at another",
              "cut them square " + Cure.word("[wall] fold-edges", "square").words()));
    }
  }
}
