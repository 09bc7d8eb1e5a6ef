package plycrag.check.standing;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.standing.RunAtAngle;
import plycrag.layout.standing.RunAtAngle.Body;
import plycrag.layout.support.Tether;
import plycrag.units.Decimal;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.FacetAtAngle;
import plycrag.wall.room.RoomPlane;

/** What of a run is too high for the ceiling: a facet, or what holds it. */
final class UnderCeiling {
  private final Layout layout;
  private final List<FacetLayout> run;
  private final String what;
  private final boolean isLevel;
  private final ToDoubleFunction<Vector3> over;

  /**
   * A run under a ceiling.
   *
   * @param what the ceiling in words
   * @param plane where it is; nothing is too high where that is not told
   */
  UnderCeiling(Layout layout, List<FacetLayout> run, String what, Optional<RoomPlane> plane) {
    this.layout = layout;
    this.run = run;
    this.what = what;
    this.isLevel = plane.filter(one -> !one.isLevel()).isEmpty();
    this.over = at -> plane.map(one -> one.heightOver(at)).orElse(-1.0);
  }

  /** What is too high with the run as it stands at one of its angles. */
  void judge(RunAtAngle atAngle, WholeWall report, List<Finding> findings) {
    List<Body> frames = atAngle.bodies().stream().filter(one -> one.facet().isPresent()).toList();
    List<Body> timber = atAngle.bodies().stream().filter(one -> one.facet().isEmpty()).toList();
    Optional<Beyond> frame = Beyond.furthest(frames, over);
    frame.ifPresent(beyond -> findings.add(finding(beyond, facetCure(beyond), report)));
    for (Body body : timber) {
      Beyond.furthest(List.of(body), over)
          .ifPresent(beyond -> findings.add(finding(beyond, timberCure(beyond), report)));
    }
  }

  private Finding finding(Beyond beyond, String cure, WholeWall report) {
    Tape tape = layout.wall().tape();
    Body body = beyond.body();
    String first = body.facet().map(facet -> facet.facet().name()).orElse(body.mark());
    String angle =
        body.facet()
            .filter(facet -> facet.swing().isPresent())
            .map(facet -> " at " + Decimal.of(facet.angle(), 2) + "°")
            .orElse("");
    return report.finding(
        first,
        "",
        new Measure(-beyond.by(), 0),
        body.owner()
            + " is "
            + tape.text(tape.snapUp(beyond.by()))
            + " too high for "
            + what
            + angle
            + (isLevel ? "" : ", " + place(beyond.at())),
        cure);
  }

  /** Where a place is, seen from above. */
  private String place(Vector3 at) {
    Tape tape = layout.wall().tape();
    return tape.text(tape.snap(at.x()))
        + " from the wall's left and "
        + tape.text(Math.abs(tape.snap(at.y())))
        + (at.y() < 0 ? " behind its foot" : " out from its foot");
  }

  private String facetCure(Beyond beyond) {
    FacetAtAngle facet = beyond.body().facet().orElseThrow();
    return shorter(facet, beyond.by()).orElseGet(() -> lower(facet.facet()));
  }

  /** How long a facet may be, if making it shorter helps. */
  private Optional<String> shorter(FacetAtAngle facet, double by) {
    Tape tape = layout.wall().tape();
    Vector3 foot = facet.at(new Vector3(0, 0, 0));
    double gain = over.applyAsDouble(facet.at(new Vector3(0, 1, 0))) - over.applyAsDouble(foot);
    double fitting = tape.snapDown(facet.facet().length() - by / gain);
    return gain > Tolerance.RECKONING && fitting > 0
        ? Optional.of(
            "facet "
                + facet.facet().name()
                + " fits with a length of "
                + tape.text(fitting)
                + " up the slope ([[facet]] "
                + (facet.facet().isRectangle() ? "length)" : "outline)"))
        : Optional.empty();
  }

  private static String lower(Facet facet) {
    return facet.standsOnFacet()
        ? "make what facet " + facet.name() + " stands on lower ([[facet]] length, [wall] raise)"
        : "stand facet " + facet.name() + " lower ([wall] raise)";
  }

  private String timberCure(Beyond beyond) {
    List<Tether> tethers = layout.support().orElseThrow().tethers();
    Facet top = run.get(run.size() - 1).facet();
    return tethers.isEmpty()
        ? shorter(new FacetAtAngle(top, Optional.empty(), top.angle()), beyond.by())
            .orElseGet(() -> lower(top))
        : anchoredLower(tethers.get(0), beyond.by());
  }

  /** The upper ledger of a hinged wall is where it is held on the building. */
  private String anchoredLower(Tether tether, double by) {
    Tape tape = layout.wall().tape();
    Facet top = run.get(run.size() - 1).facet();
    double most = tether.anchor().z() - by;
    String anchor =
        "anchor it at most "
            + tape.text(tape.snapDown(most))
            + " above the floor ([support] anchor-height)";
    double attach = attach(tether, most);
    if (attach >= tether.v()) {
      return anchor;
    }
    String hold =
        "hold facet "
            + top.name()
            + " at most "
            + tape.text(tape.snapDown(attach))
            + " up its slope ([support] attach)";
    return isAnchorTold() ? hold + ", and " + anchor : hold;
  }

  /** Else it follows what is held. */
  private boolean isAnchorTold() {
    return layout.wall().support().flatMap(asked -> asked.hinge().anchorHeight()).isPresent();
  }

  /** How far up the slope it may be held so that it is anchored no lower at any angle, mm. */
  private double attach(Tether tether, double most) {
    double lowest = tether.v();
    for (double angle : RunAtAngle.angles(layout, 0)) {
      double height = layout.held(tether, angle).z();
      Tether below = new Tether("", false, tether.u(), tether.v() - 1, tether.anchor());
      double gain = height - layout.held(below, angle).z();
      if (height > most && gain > Tolerance.RECKONING) {
        lowest = Math.min(lowest, tether.v() - (height - most) / gain);
      }
    }
    return lowest;
  }
}
