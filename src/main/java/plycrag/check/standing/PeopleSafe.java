package plycrag.check.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Point;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Place;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.units.Tape;
import plycrag.wall.Cutout;
import plycrag.wall.Facet;
import plycrag.wall.GivenWall.Behind;

/**
 * Nothing could hold a head, a neck or a finger. Openings from 89 to 230 mm let a child's body
 * through and not its head (the probes of EN 1176-1, from memory).
 */
public final class PeopleSafe implements Rule {
  private static final double BODY = 89;
  private static final double HEAD = 230;

  /** Above the floor somebody reaches no higher (a choice, no source), mm. */
  private static final double REACH = 2200;

  @Override
  public String name() {
    return "people-safe";
  }

  @Override
  public String promise() {
    return "No opening could hold a head or a neck, and what could pinch or stands out is told.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    Tape tape = layout.wall().tape();
    double mat = layout.wall().room().mat().thickness().orElse(0.0);
    for (FacetLayout facet : layout.facets()) {
      underEdge(facet.facet(), mat, tape, findings);
      for (Cutout cutout : facet.facet().cutouts()) {
        opening(cutout, tape, findings);
      }
    }
    hinges(layout, findings);
    if (isOpen(layout)) {
      back(findings);
      for (FacetLayout facet : layout.facets()) {
        bolts(facet, tape, findings);
      }
    }
    return findings;
  }

  private void underEdge(Facet facet, double mat, Tape tape, List<Finding> findings) {
    double gap = facet.raise() - mat;
    if (!facet.standsOnFacet() && isTrap(gap)) {
      findings.add(
          new WholeWall(name(), Severity.WARNING)
              .finding(
                  facet.name(),
                  "",
                  new Measure(gap, HEAD),
                  "the gap of "
                      + tape.text(gap)
                      + " under the lower edge of facet "
                      + facet.name()
                      + " could hold a child's head",
                  "close it with a kick or a board, raise the wall by more, or lay mats up to it"));
    }
  }

  private void opening(Cutout cutout, Tape tape, List<Finding> findings) {
    Envelope box = cutout.shape().getEnvelopeInternal();
    double smaller = Math.min(box.getWidth(), box.getHeight());
    if (!cutout.filled() && isTrap(smaller)) {
      findings.add(
          new WholeWall(name(), Severity.WARNING)
              .finding(
                  "the opening "
                      + cutout.name()
                      + " is "
                      + tape.text(smaller)
                      + " across and could hold a child's head",
                  "close it with a cover, make it smaller or larger, or say filled = true if something"
                      + " fills it"));
    }
  }

  private static boolean isTrap(double opening) {
    return opening >= BODY && opening <= HEAD;
  }

  private void hinges(Layout layout, List<Finding> findings) {
    boolean hinged = layout.joints().stream().anyMatch(one -> one.kind() == Joint.Kind.HINGE);
    if (hinged) {
      findings.add(
          new WholeWall(name(), Severity.WARNING)
              .finding(
                  "fingers are caught at the hinges when the wall is moved",
                  "cover the gap on both sides, and let nobody near while it is moved"));
    }
  }

  /** Whether somebody could stand behind the wall. */
  private static boolean isOpen(Layout layout) {
    return layout.support().isPresent()
        && layout.wall().behind() == Behind.WALK_IN
        && layout.wall().supports().any(asked -> !asked.isFlat());
  }

  private void back(List<Finding> findings) {
    findings.add(
        new WholeWall(name(), Severity.NOTE)
            .finding(
                "the back of the wall is open to anybody",
                "close it off, so that nobody plays, climbs or stands there while others climb"));
  }

  /** Frames that meet at a fold are bolted together, and the ends of the bolts stand out. */
  private void bolts(FacetLayout facet, Tape tape, List<Finding> findings) {
    for (Joint joint : facet.joints()) {
      Point at = joint.place();
      double height = facet.facet().plane().z(at.getY(), 0);
      if (joint.kind() == Joint.Kind.FOLD && height <= REACH) {
        findings.add(
            new Finding(
                name(),
                Severity.NOTE,
                new Place.OnFacet(facet.facet().name(), at.getX(), at.getY()),
                joint.mark(),
                "",
                Optional.empty(),
                "the bolts of joint "
                    + joint.mark()
                    + ", "
                    + tape.text(tape.snap(height))
                    + " above the floor, stand out where somebody behind the wall can reach",
                "turn their heads to that side, cut off what stands out and cap it"));
      }
    }
  }
}
