package plycrag.drawing.pen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.document.Xy;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;
import plycrag.geometry.SpatialIndex;
import plycrag.layout.facet.FacetLayout;

/** Finds room for words among what is drawn. */
public final class FreeSpot {
  private static final int STEPS = 60;
  private static final int STRETCHES = 40;

  private final SpatialIndex<Envelope> taken;

  /** Room beside boxes that are taken. */
  public FreeSpot(List<Envelope> taken) {
    this.taken = new SpatialIndex<>(taken, box -> box);
  }

  /**
   * Room on a facet: clear of holes, screws, seams and the sides of timber.
   *
   * @param rings what else is taken, in (u, v)
   */
  public static FreeSpot on(FacetLayout layout, List<Envelope> rings) {
    List<Envelope> boxes = new ArrayList<>(rings);
    layout.inserts().forEach(insert -> boxes.add(insert.centre().getEnvelopeInternal()));
    layout.screws().forEach(screw -> boxes.add(screw.centre().getEnvelopeInternal()));
    layout.members().forEach(member -> addEdges(member.footprint(), boxes));
    layout.pieces().forEach(piece -> addEdges(piece.outline(), boxes));
    return new FreeSpot(boxes);
  }

  /** Takes the edges of an area; those that slant in short stretches. */
  public static void addEdges(Polygon area, List<Envelope> boxes) {
    for (LineString edge : Shapes.edges(area)) {
      boolean slants = !Direction.of(edge).isSquare();
      int parts = slants ? STRETCHES : 1;
      LineSegment line = new LineSegment(edge.getCoordinateN(0), edge.getCoordinateN(1));
      for (int part = 0; part < parts; part++) {
        boxes.add(
            new Envelope(
                line.pointAlong((double) part / parts),
                line.pointAlong((double) (part + 1) / parts)));
      }
    }
  }

  /**
   * The middle of the free place nearest to the middle of an area.
   *
   * @param place where to look
   * @param width of what is to be placed, mm
   * @param height likewise
   */
  public Optional<Xy> in(Polygon place, double width, double height) {
    Envelope area = place.getEnvelopeInternal();
    Envelope room = new Envelope(area);
    room.expandBy(-width / 2, -height / 2);
    Envelope best = null;
    for (int at = 0; !room.isNull() && at < (STEPS + 1) * (STEPS + 1); at++) {
      int column = at / (STEPS + 1);
      int row = at % (STEPS + 1);
      double u = room.getMinX() + room.getWidth() * column / STEPS;
      double v = room.getMinY() + room.getHeight() * row / STEPS;
      Envelope box = new Envelope(u - width / 2, u + width / 2, v - height / 2, v + height / 2);
      boolean nearer = best == null || toMiddle(box, area) < toMiddle(best, area);
      if (nearer && isFree(box) && isInside(box, place)) {
        best = box;
      }
    }
    return Optional.ofNullable(best).map(box -> new Xy(box.centre().x, box.centre().y));
  }

  private static boolean isInside(Envelope box, Polygon place) {
    return place.isRectangle() || place.covers(Shapes.point(box.centre().x, box.centre().y));
  }

  /** Whether nothing is drawn in a box. */
  public boolean isFree(Envelope box) {
    return taken.isFree(box);
  }

  private static double toMiddle(Envelope box, Envelope area) {
    return box.centre().distance(area.centre());
  }
}
