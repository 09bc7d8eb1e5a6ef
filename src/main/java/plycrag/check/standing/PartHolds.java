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
import plycrag.wall.room.Supports;

/** Whether one part of a support holds its facets, and does not sway. */
final class PartHolds {
  private final String rule;
  private final Layout layout;
  private final SupportPart part;
  private final GivenSupport asked;
  private final String table;
  private final String sheets;
  private final List<Finding> findings = new ArrayList<>();

  /**
   * @param rule that finds
   */
  PartHolds(String rule, Layout layout, SupportPart part) {
    this.rule = rule;
    this.layout = layout;
    this.part = part;
    this.asked = part.asked();
    this.table = layout.wall().supports().table(part.facets().get(0));
    this.sheets = Cure.word(table + " lateral", "sheets").words();
  }

  List<Finding> findings() {
    if (asked.needsFoot() && !standsFirst()) {
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

  /** Whether it holds the lowest facet of its run. */
  private boolean standsFirst() {
    return layout.runs().get(part.run()).get(0).facet().name().equals(part.facets().get(0));
  }

  private void foot() {
    String facet = part.facets().get(0);
    String what = asked.kind() == Kind.HINGED ? "a hinge" : "a support on posts";
    add(
        Severity.ERROR,
        "facet "
            + facet
            + " stands on a facet that is held another way, and "
            + what
            + " holds all from the floor up",
        "let it hold the facets below too, or fix facet "
            + facet
            + " to a building or hang it ("
            + table
            + " kind)");
  }

  /** The support, and of which facets where there are others. */
  private String support() {
    return layout.support().orElseThrow().parts().size() == 1
        ? "the support"
        : "the support of facet " + String.join(", ", part.facets());
  }

  private void unheld() {
    for (Unheld unheld : part.unheld()) {
      HeldEdge edge = HeldEdge.of(unheld, part, layout);
      WholeWall report = new WholeWall(rule, Severity.ERROR);
      findings.add(
          edge.measure()
              .map(
                  measure ->
                      report.finding(
                          unheld.facet(), "", measure, edge.sentence(), edge.suggestion()))
              .orElseGet(() -> report.finding(edge.sentence(), edge.suggestion())));
    }
  }

  private void unmet() {
    for (String facet : part.unmet()) {
      add(
          Severity.ERROR,
          "facet " + facet + " has no timber where the support is to end on it",
          "supports end on studs that reach the upper edge, and are 500 mm long or more where that"
              + " slants: give the facet such an edge ([[facet]] outline), or hold it another way"
              + " ("
              + table
              + " kind)");
    }
  }

  private void sway() {
    if (asked.bracing().lateral() == Lateral.NONE) {
      add(
          Severity.ERROR,
          "nothing keeps " + support() + " from swaying along the wall",
          "let the sheets do it " + sheets + ", or braces (" + table + " lateral)");
    }
    if (isBraced() && !asked.hasPosts()) {
      add(
          Severity.ERROR,
          "braces are asked for where there are no posts",
          "let the sheets keep it from swaying " + sheets);
    }
  }

  private boolean isBraced() {
    Lateral lateral = asked.bracing().lateral();
    return lateral == Lateral.BRACES || lateral == Lateral.KNEE_BRACES;
  }

  private void narrow(Lateral lateral) {
    String knees =
        "let braces do it "
            + Cure.word(table + " lateral", "braces").words()
            + ", or set the posts further apart ("
            + table
            + " bay)";
    add(
        Severity.ERROR,
        "there is no room between the posts for what keeps them from swaying along the wall",
        lateral == Lateral.KNEE_BRACES
            ? knees
            : "let the sheets do it " + sheets + ", or make the wall wide enough for two posts");
  }

  private void apart() {
    double widest = part.widestBay();
    if (widest > asked.bay() + Tolerance.TOUCH) {
      Tape tape = layout.wall().tape();
      findings.add(
          new WholeWall(rule, Severity.WARNING)
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
                      + table
                      + " bay)"));
    }
  }

  private void hinge() {
    if (asked.kind() != Kind.HINGED) {
      return;
    }
    if (layout.runs().stream().anyMatch(run -> run.size() < 2) || layout.runs().size() > 1) {
      add(
          Severity.ERROR,
          "a hinged wall has a kick that stands and one facet or more on it, and no wall beside it",
          "give a kick and what swings on it, by themselves");
    }
    if (layout.wall().foldEdges() == FoldEdges.MITRED) {
      add(
          Severity.ERROR,
          "sheets and timber that are mitred to one angle bind at another",
          "cut them square " + Cure.word("[wall] fold-edges", "square").words());
    }
  }

  /** A support of its own is that of a facet, which is named. */
  private void add(Severity severity, String sentence, String suggestion) {
    boolean isNamed = sentence.contains("facet ") || !Supports.isOwn(table);
    String told = isNamed ? sentence : "for facet " + part.facets().get(0) + ", " + sentence;
    findings.add(new WholeWall(rule, severity).finding(told, suggestion));
  }
}
