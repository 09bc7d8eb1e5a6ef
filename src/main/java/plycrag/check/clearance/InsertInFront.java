package plycrag.check.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.pattern.Insert;
import plycrag.wall.Facet;
import plycrag.wall.room.Room;

/**
 * Before every insert is room for a hold and the hand on it, and behind it for its bolt: no other
 * facet, nothing of the building, no mat.
 */
public final class InsertInFront implements Rule {
  private static final String NAME = "insert-front";

  /** A hold and the hand on it (common practice, no source), mm. */
  private static final double HAND = 150;

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public String promise() {
    return "Before every insert is room for a hold and a hand, and no insert lies behind another"
        + " facet.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    Faces faces = new Faces(layout);
    List<Finding> findings = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      Report report = new Report(NAME, facet.facet().name(), layout.wall().tape());
      for (Insert insert : facet.inserts()) {
        At at = new At(facet.facet(), insert, layout.wall().inserts().bolt().reach());
        hidden(at, faces, report)
            .or(() -> built(at, layout, report))
            .or(() -> low(at, layout, report))
            .ifPresent(findings::add);
      }
    }
    return findings;
  }

  /**
   * An insert where it is in the room.
   *
   * @param facet its facet
   * @param insert it
   * @param bolt how far behind the sheets a bolt's end may reach, mm
   */
  private record At(Facet facet, Insert insert, double bolt) {
    /** So far before the face; behind it below zero, mm. */
    Vector3 out(double distance) {
      FacetPlane plane = facet.plane();
      return plane.toRoom(new Vector3(insert.centre().getX(), insert.centre().getY(), -distance));
    }

    Report.Thing thing() {
      return new Report.Thing(insert.mark(), insert.centre());
    }
  }

  private static Optional<Finding> hidden(At at, Faces faces, Report report) {
    String own = at.facet().name();
    Optional<String> hiding = faces.hiding(own, at.out(1));
    if (hiding.isPresent()) {
      return Optional.of(
          error(
              at,
              hiding.get(),
              "lies behind facet " + hiding.get() + ", where nobody gets",
              report));
    }
    Optional<String> before =
        faces.met(own, at.out(0), at.out(HAND)).or(() -> faces.hiding(own, at.out(HAND)));
    if (before.isPresent()) {
      return Optional.of(
          error(
              at,
              before.get(),
              "has facet " + before.get() + " nearer before it than a hold and a hand need",
              report));
    }
    return faces
        .met(own, at.out(-1), at.out(-at.bolt()))
        .map(
            behind ->
                error(at, behind, "has its bolt reach into the sheets of facet " + behind, report));
  }

  private static Finding error(At at, String facet, String sentence, Report report) {
    return report.error(
        at.thing(),
        facet,
        new Measure(0, HAND),
        at.insert().mark() + " " + sentence,
        "make facet "
            + at.facet().name()
            + " narrower there ([[facet]] outline), or have facet "
            + facet
            + " stand further off or lean less");
  }

  private static Optional<Finding> built(At at, Layout layout, Report report) {
    return new BuildingAround(layout)
        .met(at.out(0), at.out(HAND))
        .map(
            part ->
                report.error(
                    at.thing(),
                    part,
                    new Measure(0, HAND),
                    at.insert().mark()
                        + " has "
                        + part
                        + " nearer before it than a hold and a hand need",
                    "end the pattern further from "
                        + part
                        + " ([[zone]]), or make the wall lower"));
  }

  private static Optional<Finding> low(At at, Layout layout, Report report) {
    Room.Mat mat = layout.wall().room().mat();
    double top = mat.thickness().orElse(0.0);
    double lowest = at.out(HAND).z();
    boolean isUnderMats = at.out(0).z() < top; // of which another rule tells
    if (isUnderMats || lowest >= top) {
      return Optional.empty();
    }
    String what = top > 0 ? "the mats" : "the floor";
    Finding error =
        report.error(
            at.thing(),
            what,
            new Measure(lowest - top, 0),
            at.insert().mark() + " has no room for a hold and a hand above " + what,
            "raise the wall ([wall] raise), or begin the pattern higher ([inserts] setback or a"
                + " [[zone]])");
    return Optional.of(
        new Finding(
            error.rule(),
            Severity.WARNING,
            error.place(),
            error.first(),
            error.second(),
            error.measure(),
            error.sentence(),
            error.suggestion()));
  }
}
