package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.finding.Measure;
import plycrag.geometry.Distances;
import plycrag.geometry.Solid;
import plycrag.geometry.SpatialIndex;
import plycrag.geometry.Tolerance;
import plycrag.layout.Obstacle.Kind;
import plycrag.params.ClearanceParameters;
import plycrag.params.InsertParameters;
import plycrag.wall.Wall;

/**
 * What stands around a place on a facet, measured from an insert at that place. The set-out that
 * leaves blocked inserts out and the rules that judge the result ask the same questions here.
 *
 * <p>Every answer holds only what falls short. Cost: a few look-ups in packed R-trees for a place.
 */
public final class InsertSurroundings {
  private final Given given;
  private final InsertParameters insert;
  private final ClearanceParameters clearance;
  private final double thread;
  private final String facet;
  private final Polygon outline;
  private final double thickness;
  private final SpatialIndex<Member> members;
  private final SpatialIndex<Neighbour> neighbours;
  private final SpatialIndex<Core> pieces;
  private final SpatialIndex<Screw> screws;

  /** All that the answers follow from. */
  private record Given(
      Wall wall, FramedFacet frame, List<Neighbour> neighbours, List<Screw> screws) {}

  InsertSurroundings(Wall wall, FramedFacet frame, List<Neighbour> neighbours, List<Screw> screws) {
    this.given = new Given(wall, frame, List.copyOf(neighbours), List.copyOf(screws));
    this.insert = wall.inserts();
    this.clearance = wall.clearance();
    this.thread = wall.screws().diameter() / 2;
    this.facet = frame.facet().name();
    this.outline = frame.facet().outline();
    this.thickness = wall.sheet().thickness();
    this.members = new SpatialIndex<>(frame.members(), Member::shadow);
    this.neighbours = new SpatialIndex<>(neighbours, Neighbour::shadow);
    this.pieces =
        new SpatialIndex<>(
            frame.pieces().stream().map(piece -> new Core(piece.mark(), piece.core())).toList(),
            core -> core.area().getEnvelopeInternal());
    this.screws = new SpatialIndex<>(screws, screw -> screw.centre().getEnvelopeInternal());
  }

  /** Members too near: for each the worse of flange and bolt zone. */
  public List<Obstacle> timber(Point place) {
    double reach =
        Math.max(flange() + clearance.insertToTimber(), bolt() + clearance.boltToTimber());
    List<Obstacle> obstacles = new ArrayList<>();
    for (Member member : members.near(place.getEnvelopeInternal(), reach)) {
      timber(place, member).ifPresent(obstacles::add);
    }
    for (Neighbour neighbour : neighbours.near(place.getEnvelopeInternal(), reach)) {
      Measure measure = boltTo(neighbour.body(), place);
      obstacle(Kind.BOLT_AND_TIMBER, neighbour.member().mark(), measure).ifPresent(obstacles::add);
    }
    return obstacles;
  }

  private Optional<Obstacle> timber(Point place, Member member) {
    double distance = Distances.from(place, member.footprint());
    Measure atFlange = new Measure(distance - flange(), clearance.insertToTimber());
    Measure atBolt =
        member.isSquare()
            ? new Measure(distance - bolt(), clearance.boltToTimber())
            : boltTo(member.body(thickness), place);
    return atBolt.shortfall() > atFlange.shortfall()
        ? obstacle(Kind.BOLT_AND_TIMBER, member.mark(), atBolt)
        : obstacle(Kind.FLANGE_AND_TIMBER, member.mark(), atFlange);
  }

  private Measure boltTo(Solid body, Point place) {
    double found = body.distance(place, thickness, thickness + insert.boltReach());
    return new Measure(found - bolt(), clearance.boltToTimber());
  }

  /** That the hole lies across an edge or outside every piece, measured from its rim. */
  public Optional<Obstacle> outside(Point place) {
    return outside(place, pieceAt(place));
  }

  private Optional<Obstacle> outside(Point place, Optional<Core> piece) {
    double inside = piece.isEmpty() ? 0 : -Distances.from(place, piece.get().area());
    Measure measure = new Measure(inside - insert.hole() / 2, 0);
    return obstacle(Kind.OUTSIDE, piece.map(Core::mark).orElse(""), measure);
  }

  /** The edge of the piece around it, if too near to the flange but clear of the hole. */
  public Optional<Obstacle> edge(Point place) {
    Optional<Core> piece = pieceAt(place);
    if (piece.isEmpty() || outside(place, piece).isPresent()) {
      return Optional.empty();
    }
    double found = -Distances.from(place, piece.get().area()) - flange();
    Measure measure = new Measure(found, clearance.insertToEdge());
    return obstacle(Kind.FLANGE_AND_EDGE, piece.get().mark(), measure);
  }

  /** Screws too near. */
  public List<Obstacle> screws(Point place) {
    double reach = flange() + thread + clearance.screwToInsert();
    List<Obstacle> obstacles = new ArrayList<>();
    for (Screw screw : screws.near(place.getEnvelopeInternal(), reach)) {
      double found = place.distance(screw.centre()) - flange() - thread;
      obstacle(Kind.FLANGE_AND_SCREW, screw.mark(), new Measure(found, clearance.screwToInsert()))
          .ifPresent(obstacles::add);
    }
    return obstacles;
  }

  /** The facet's outline, if nearer than the setback. */
  public Optional<Obstacle> outline(Point place) {
    double found = -Distances.from(place, outline);
    Measure measure = new Measure(found, insert.setback());
    return obstacle(Kind.CENTRE_AND_OUTLINE, facet, measure);
  }

  /** Everything that stands in the way of an insert here, other inserts apart. */
  List<Obstacle> all(Point place) {
    List<Obstacle> obstacles = new ArrayList<>(timber(place));
    outside(place).ifPresent(obstacles::add);
    edge(place).ifPresent(obstacles::add);
    outline(place).ifPresent(obstacles::add);
    obstacles.addAll(screws(place));
    return obstacles;
  }

  /** The distance between the flanges of two inserts, against what is required. */
  public Measure between(Point place, Point other) {
    return new Measure(place.distance(other) - insert.flange(), clearance.insertToInsert());
  }

  /** Whether a distance is too short by more than the rounding of its ends. */
  public static boolean fallsShort(Measure measure) {
    return measure.shortfall() > Tolerance.OFF_GRID;
  }

  /** The distance between the centres of two inserts within which they may be too near, mm. */
  public double reach() {
    return insert.flange() + clearance.insertToInsert();
  }

  /** What goes through a piece may not leave this. */
  private record Core(String mark, Polygon area) {}

  private Optional<Core> pieceAt(Point place) {
    return pieces.near(place.getEnvelopeInternal(), 0).stream()
        .filter(piece -> Distances.covers(piece.area(), place))
        .findFirst();
  }

  private double flange() {
    return insert.flange() / 2;
  }

  private double bolt() {
    return insert.boltZone() / 2;
  }

  private static Optional<Obstacle> obstacle(Kind kind, String mark, Measure measure) {
    return fallsShort(measure) ? Optional.of(new Obstacle(kind, mark, measure)) : Optional.empty();
  }

  /** Whether another answers the same because it was made of the same. */
  @Override
  public boolean equals(Object other) {
    return other instanceof InsertSurroundings surroundings && given.equals(surroundings.given);
  }

  @Override
  public int hashCode() {
    return given.hashCode();
  }
}
