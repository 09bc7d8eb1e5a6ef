package plycrag.check.standing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Cure;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.support.PlacedMember;
import plycrag.layout.support.WallSupport;
import plycrag.solve.support.Unheld;
import plycrag.units.Count;
import plycrag.units.Tape;
import plycrag.wall.GivenWall.FoldEdges;
import plycrag.wall.room.Ceiling;
import plycrag.wall.room.GivenSupport;
import plycrag.wall.room.GivenSupport.Base;
import plycrag.wall.room.GivenSupport.Kind;
import plycrag.wall.room.GivenSupport.Lateral;
import plycrag.wall.room.Room.Members;

/** The support holds every facet, in both directions, by something that can bear it. */
public final class SupportHolds implements Rule {
  private static final int LEAST_ANCHORS = 2;

  private static final String FREE = Cure.word("[support] kind", "freestanding").words();
  private static final String SHEETS = Cure.word("[support] lateral", "sheets").words();

  @Override
  public String name() {
    return "support-holds";
  }

  @Override
  public String promise() {
    return "A support holds every facet, along the wall and across it, by what can be fixed to.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    if (layout.support().isPresent()) {
      GivenSupport asked = layout.wall().support().orElseThrow();
      boolean unknown = asked.kind() == Kind.HUNG && !layout.wall().room().ceiling().isTold();
      if (!unknown) {
        unheld(layout, layout.support().get(), findings);
        unmet(layout.support().get(), findings);
      }
      sway(asked, findings);
      if (layout.support().get().sways()) {
        narrow(asked.bracing().lateral(), findings);
      }
      apart(layout, asked, findings);
      building(layout, asked, findings);
      hinge(layout, asked, findings);
    }
    return findings;
  }

  private void unheld(Layout layout, WallSupport support, List<Finding> findings) {
    for (Unheld unheld : support.unheld()) {
      HeldEdge edge = HeldEdge.of(unheld, layout);
      WholeWall report = new WholeWall(name(), Severity.ERROR);
      findings.add(
          edge.measure()
              .map(
                  measure ->
                      report.finding(
                          unheld.facet(), "", measure, edge.sentence(), edge.suggestion()))
              .orElseGet(() -> report.finding(edge.sentence(), edge.suggestion())));
    }
  }

  private void unmet(WallSupport support, List<Finding> findings) {
    for (String facet : support.unmet()) {
      add(
          Severity.ERROR,
          "facet " + facet + " has no timber where the support is to end on it",
          "supports end on studs that reach the upper edge, and are 500 mm long or more where that"
              + " slants: give the facet such an edge ([[facet]] outline), or hold it another way"
              + " ([support] kind)",
          findings);
    }
  }

  private void sway(GivenSupport asked, List<Finding> findings) {
    if (asked.bracing().lateral() == Lateral.NONE) {
      add(
          Severity.ERROR,
          "nothing keeps the support from swaying along the wall",
          "let the sheets do it " + SHEETS + ", or braces ([support] lateral)",
          findings);
    }
    if (isBraced(asked) && !asked.hasPosts()) {
      add(
          Severity.ERROR,
          "braces are asked for where there are no posts",
          "let the sheets keep it from swaying " + SHEETS,
          findings);
    }
  }

  private static boolean isBraced(GivenSupport asked) {
    Lateral lateral = asked.bracing().lateral();
    return lateral == Lateral.BRACES || lateral == Lateral.KNEE_BRACES;
  }

  private void narrow(Lateral lateral, List<Finding> findings) {
    String knees =
        "let braces do it "
            + Cure.word("[support] lateral", "braces").words()
            + ", or set the posts further apart ([support] bay)";
    add(
        Severity.ERROR,
        "there is no room between the posts for what keeps them from swaying along the wall",
        lateral == Lateral.KNEE_BRACES
            ? knees
            : "let the sheets do it " + SHEETS + ", or make the wall wide enough for two posts",
        findings);
  }

  private void apart(Layout layout, GivenSupport asked, List<Finding> findings) {
    double widest = layout.support().orElseThrow().widestBay();
    if (widest > asked.bay() + Tolerance.TOUCH) {
      Tape tape = layout.wall().tape();
      findings.add(
          new WholeWall(name(), Severity.WARNING)
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
                      + " allow more ([support] bay)"));
    }
  }

  private void building(Layout layout, GivenSupport asked, List<Finding> findings) {
    if (layout.wall().room().noDrill() && !asked.hasPosts()) {
      add(
          Severity.ERROR,
          "nothing may be fixed to the building, and this support is",
          "let it stand free " + FREE,
          findings);
    }
    if (asked.kind() == Kind.HUNG) {
      ceiling(layout.wall().room().ceiling(), findings);
      fallsAlong(layout, findings);
      findings.addAll(BeyondJoists.findings(layout, new WholeWall(name(), Severity.ERROR)));
    }
    if (asked.fixing().base().filter(base -> base == Base.SINGLE_SKIN).isPresent()) {
      add(
          Severity.WARNING,
          "a wall one brick thick is not checked for what it is to hold",
          "have it looked at by an engineer before anything is fixed to it",
          findings);
    }
    anchors(layout.support().orElseThrow(), findings);
  }

  private void ceiling(Ceiling ceiling, List<Finding> findings) {
    if (!ceiling.isTold()) {
      add(
          Severity.ERROR,
          "the wall is to hang, and how high the ceiling is has not been told",
          "give its height ([room] ceiling)",
          findings);
    }
    if (ceiling.members() != Members.JOISTS) {
      String what =
          ceiling.members() == Members.TRUSS
              ? "the ceiling is carried by trusses, which carry nothing but what they were made for"
              : "what carries the ceiling is not known";
      add(
          Severity.ERROR,
          what,
          "let the wall stand free " + FREE + ", or find joists ([room] ceiling-members)",
          findings);
    } else if (ceiling.joists().section().isEmpty() || ceiling.joists().span().isEmpty()) {
      add(
          Severity.ERROR,
          "section and span of the ceiling's joists have not been told",
          "measure them ([room] joist-section and joist-span)",
          findings);
    }
  }

  /** Ledgers lie level, against what is above all along. */
  private void fallsAlong(Layout layout, List<Finding> findings) {
    Tape tape = layout.wall().tape();
    for (PlacedMember placed : layout.support().orElseThrow().members()) {
      Envelope box = placed.member().box();
      if (placed.member().role() == MemberRole.LEDGER) {
        double rise =
            Math.abs(above(layout, placed, box.getMaxX()) - above(layout, placed, box.getMinX()));
        if (rise > Tolerance.MARKED) {
          add(
              Severity.ERROR,
              "what is above rises by "
                  + tape.text(tape.snapUp(rise))
                  + " over the length of ledger "
                  + placed.member().mark()
                  + ", which lies level",
              "let the wall stand free " + FREE + ", or fix it to a wall ([support] kind)",
              findings);
        }
      }
    }
  }

  /** How high the room is over a place along a ledger, mm. */
  private static double above(Layout layout, PlacedMember ledger, double along) {
    Vector3 place = ledger.plane().toRoom(new Vector3(along, 0, 0));
    return layout.wall().room().ceiling().at(place).orElse(0.0);
  }

  private void anchors(WallSupport support, List<Finding> findings) {
    for (PlacedMember placed : support.members()) {
      String mark = placed.member().mark();
      long count = support.anchors().stream().filter(one -> one.member().equals(mark)).count();
      if (placed.member().role() == MemberRole.LEDGER && count < LEAST_ANCHORS) {
        add(
            Severity.ERROR,
            "ledger "
                + mark
                + " meets "
                + Count.of(Math.toIntExact(count), "place")
                + " to fix it to, and two are the least",
            "move the wall so that studs or joists lie behind it, or set timber between them first",
            findings);
      }
    }
  }

  private void hinge(Layout layout, GivenSupport asked, List<Finding> findings) {
    if (asked.kind() != Kind.HINGED) {
      return;
    }
    if (layout.runs().stream().anyMatch(run -> run.size() < 2) || layout.runs().size() > 1) {
      add(
          Severity.ERROR,
          "a hinged wall has a kick that stands and one facet or more on it, and no wall beside it",
          "give a kick and what swings on it, by themselves",
          findings);
    }
    if (layout.wall().foldEdges() == FoldEdges.MITRED) {
      add(
          Severity.ERROR,
          "sheets and timber that are mitred to one angle bind at another",
          "cut them square " + Cure.word("[wall] fold-edges", "square").words(),
          findings);
    }
  }

  private void add(Severity severity, String sentence, String suggestion, List<Finding> findings) {
    findings.add(new WholeWall(name(), severity).finding(sentence, suggestion));
  }
}
