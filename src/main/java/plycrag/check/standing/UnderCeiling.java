package plycrag.check.standing;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Cure;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Trig;
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
import plycrag.wall.Fold;
import plycrag.wall.room.RoomPlane;

/** What of a run is too high for the ceiling: a facet, or what holds it. */
final class UnderCeiling {
  /** Nearer to its lower edge a hinged facet cannot be asked to be held, mm. */
  private static final double LEAST_ATTACH = 100;

  /** No facet can be asked to be shorter, mm. */
  private static final double LEAST_LENGTH = 300;

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
    double across = tape.snap(at.x());
    return tape.text(Math.abs(across))
        + (across < 0 ? " left of the wall's left end and " : " from the wall's left and ")
        + tape.text(Math.abs(tape.snap(at.y())))
        + (at.y() < 0 ? " behind its foot" : " out from its foot");
  }

  private String facetCure(Beyond beyond) {
    FacetAtAngle facet = beyond.body().facet().orElseThrow();
    return shorter(facet, beyond.by()).orElseGet(() -> lower(facet.facet(), beyond.by()));
  }

  /** How long a facet may be, if making it shorter helps. */
  private Optional<String> shorter(FacetAtAngle facet, double by) {
    Tape tape = layout.wall().tape();
    Vector3 foot = facet.at(new Vector3(0, 0, 0));
    double gain = over.applyAsDouble(facet.at(new Vector3(0, 1, 0))) - over.applyAsDouble(foot);
    double fitting = tape.snapDown(facet.facet().length() - by / gain);
    return gain > Tolerance.RECKONING && fitting >= LEAST_LENGTH
        ? Optional.of(
            "facet " + facet.facet().name() + " fits with a " + size(facet.facet(), fitting))
        : Optional.empty();
  }

  /** How long or high a facet fits, as its file tells it. */
  private String size(Facet facet, double length) {
    Tape tape = layout.wall().tape();
    String upTheSlope = "length of " + tape.text(length) + " up the slope ";
    return switch (facet.told().key()) {
      case LENGTH -> upTheSlope + Cure.length(facet.lengthKey(), length, tape).words();
      case OUTLINE -> upTheSlope + "(" + facet.lengthKey() + ")";
      case VERTICAL_HEIGHT -> {
        double height = tape.snapDown(length * Trig.cos(facet.angle()));
        yield "height of "
            + tape.text(height)
            + " "
            + Cure.length(facet.lengthKey(), height, tape).words();
      }
    };
  }

  private Facet below(Facet facet) {
    String name = facet.fold(Fold.Place.BELOW).orElseThrow().other();
    return layout.wall().facets().stream()
        .filter(other -> other.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private String lower(Facet facet, double by) {
    if (facet.standsOnFacet()) {
      return "make what facet "
          + facet.name()
          + " stands on lower ("
          + below(facet).lengthKey()
          + ", [wall] raise)";
    }
    Tape tape = layout.wall().tape();
    double raise = tape.snapDown(facet.raise() - by);
    return raise < 0
        ? "set facet "
            + facet.name()
            + " where the ceiling is "
            + tape.text(tape.snapUp(by))
            + " higher"
        : "stand facet "
            + facet.name()
            + " lower "
            + Cure.length("[wall] raise", raise, tape).words();
  }

  private String timberCure(Beyond beyond) {
    Optional<Tether> held =
        layout.support().orElseThrow().tethers().stream()
            .filter(tether -> isAnchored(tether, beyond.body()))
            .findFirst();
    boolean isSwinging = !layout.support().orElseThrow().tethers().isEmpty();
    return held.flatMap(tether -> anchoredLower(tether, beyond.by()))
        .orElseGet(() -> lessHigh(run.get(isSwinging ? 0 : run.size() - 1).facet(), beyond.by()));
  }

  /** With a shorter facet, or one that stands lower. */
  private String lessHigh(Facet facet, double by) {
    return shorter(new FacetAtAngle(facet, Optional.empty(), facet.angle()), by)
        .orElseGet(() -> lower(facet, by));
  }

  /** Whether a timber is the ledger on which a tether is held; others hold the lowest facet. */
  private boolean isAnchored(Tether tether, Body body) {
    return layout.standing().stream()
        .filter(placed -> placed.member().mark().equals(body.mark()))
        .map(placed -> placed.member().box())
        .anyMatch(
            box -> box.getMinY() <= tether.anchor().z() && tether.anchor().z() <= box.getMaxY());
  }

  /** How the upper ledger of a hinged wall would be lower, where it is held on the building. */
  private Optional<String> anchoredLower(Tether tether, double by) {
    Tape tape = layout.wall().tape();
    Facet top = run.get(run.size() - 1).facet();
    double most = tape.snapDown(tether.anchor().z() - by);
    String anchor =
        "anchor it at most "
            + tape.text(most)
            + " above the floor "
            + Cure.length("[support] anchor-height", most, tape).words();
    double attach = tape.snapDown(attach(tether, most));
    if (attach >= tether.v()) {
      return Optional.of(anchor);
    }
    String hold =
        "hold facet "
            + top.name()
            + " at most "
            + tape.text(attach)
            + " up its slope "
            + Cure.length("[support] attach", attach, tape).words();
    return attach < LEAST_ATTACH
        ? Optional.empty()
        : Optional.of(isAnchorTold() ? hold + ", and " + anchor : hold);
  }

  /** Else it follows what is held. */
  private boolean isAnchorTold() {
    return layout.wall().supports().any(asked -> asked.hinge().anchorHeight().isPresent());
  }

  /** How far up the slope it may be held so that it is anchored no lower at any angle, mm. */
  private double attach(Tether tether, double most) {
    double lowest = tether.v();
    for (double angle : RunAtAngle.angles(layout, 0)) {
      double height = layout.held(tether, angle).z();
      Tether below = new Tether("", tether.task(), tether.u(), tether.v() - 1, tether.anchor());
      double gain = height - layout.held(below, angle).z();
      if (height > most && gain > Tolerance.RECKONING) {
        lowest = Math.min(lowest, tether.v() - (height - most) / gain);
      }
    }
    return lowest;
  }
}
