package plycrag.check.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.pattern.Insert;
import plycrag.layout.standing.Ground;
import plycrag.wall.Facet;
import plycrag.wall.room.Room;
import plycrag.wall.room.RoomPlane;

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
    BuildingAround building = new BuildingAround(layout);
    RoomPlane floor = Ground.floor(layout);
    List<Finding> findings = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      Report report = new Report(NAME, facet.facet().name(), layout.wall().tape());
      for (Insert insert : facet.inserts()) {
        At at = new At(facet.facet(), insert, layout.wall().inserts().bolt().reach());
        behind(at, faces, report)
            .or(() -> before(at, faces, report))
            .or(() -> built(at, building, report))
            .or(() -> low(at, layout, floor, report))
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

  /** Where another facet stands before it, or is reached from behind. */
  private static Optional<Finding> behind(At at, Faces faces, Report report) {
    String own = at.facet().name();
    Measure none = new Measure(0, 0);
    return faces
        .hiding(own, at.out(1))
        .map(
            other ->
                error(
                    at, other, none, "lies behind facet " + other + ", where nobody gets", report))
        .or(
            () ->
                faces
                    .met(own, at.out(-1), at.out(-at.bolt()))
                    .map(
                        other ->
                            error(
                                at,
                                other,
                                none,
                                "has its bolt reach into the sheets of facet " + other,
                                report)));
  }

  private static Optional<Finding> before(At at, Faces faces, Report report) {
    Function<Vector3, Optional<String>> met =
        to ->
            faces
                .met(at.facet().name(), at.out(0), to)
                .or(() -> faces.hiding(at.facet().name(), to));
    return met.apply(at.out(HAND))
        .map(other -> error(at, other, free(at, met), before("facet " + other), report));
  }

  private static Finding error(
      At at, String facet, Measure measure, String sentence, Report report) {
    return report.error(
        at.thing(),
        facet,
        measure,
        at.insert().mark() + " " + sentence,
        "make facet "
            + at.facet().name()
            + " narrower there ([[facet]] outline), or have facet "
            + facet
            + " stand further off or lean less");
  }

  private static String before(String what) {
    return "has " + what + " nearer before it than a hold and a hand need";
  }

  /** How far nothing is before an insert, to a millimetre below. */
  private static Measure free(At at, Function<Vector3, Optional<String>> met) {
    double free = 0;
    while (free < HAND && met.apply(at.out(free + 1)).isEmpty()) {
      free++;
    }
    return new Measure(free, HAND);
  }

  private static Optional<Finding> built(At at, BuildingAround building, Report report) {
    Function<Vector3, Optional<String>> met = to -> building.met(at.out(0), to);
    return met.apply(at.out(HAND))
        .map(
            part ->
                report.error(
                    at.thing(),
                    part,
                    free(at, met),
                    at.insert().mark() + " " + before(part),
                    "end the pattern further from "
                        + part
                        + " ([[zone]]), or make the wall lower"));
  }

  private static Optional<Finding> low(At at, Layout layout, RoomPlane floor, Report report) {
    Room.Mat mat = layout.wall().room().mat();
    double top = mat.thickness().orElse(0.0);
    double lowest = floor.heightOver(at.out(HAND));
    boolean isUnderMats = floor.heightOver(at.out(0)) < top; // of which another rule tells
    if (isUnderMats || lowest >= top) {
      return Optional.empty();
    }
    String what = top > 0 ? "the mats" : "the floor";
    return Optional.of(
        report.warning(
            at.thing(),
            what,
            new Measure(lowest - top, 0),
            at.insert().mark() + " has no room for a hold and a hand above " + what,
            "raise the wall ([wall] raise), or begin the pattern higher ([inserts] setback or a"
                + " [[zone]])"));
  }
}
