package plycrag.drawing.flat;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.document.TextSize;
import plycrag.drawing.pen.FreeSpot;
import plycrag.drawing.pen.Sketch;
import plycrag.geometry.Shapes;
import plycrag.wall.Cutout;
import plycrag.wall.Facet;

/** Where the names of a facet's openings stand, in (u, v). */
final class OpeningNames {
  /** A name and the room that it takes. */
  record Named(Cutout cutout, Envelope box) {}

  private final Facet facet;
  private final FreeSpot spots;
  private final Sketch sketch;

  /**
   * The names on one view.
   *
   * @param spots what is free beside the openings
   * @param sketch whose scale they are written at
   */
  OpeningNames(Facet facet, FreeSpot spots, Sketch sketch) {
    this.facet = facet;
    this.spots = spots;
    this.sketch = sketch;
  }

  /** The openings that lie on the facet, if only in part; one that missed it is not drawn. */
  List<Named> all() {
    return facet.cutouts().stream()
        .flatMap(cutout -> seen(cutout).map(part -> new Named(cutout, box(cutout, part))).stream())
        .toList();
  }

  private Optional<Polygon> seen(Cutout cutout) {
    if (facet.boundary().covers(cutout.shape())) {
      return Optional.of(cutout.shape());
    }
    List<Polygon> parts = Shapes.sharedAreas(cutout.shape(), facet.boundary());
    return parts.isEmpty() ? Optional.empty() : Optional.of(Shapes.largest(parts));
  }

  /** In the opening, or where it is too small for its name, in the next free place beside it. */
  private Envelope box(Cutout cutout, Polygon seen) {
    double width = sketch.paper(TextSize.width(cutout.name(), Sketch.SMALL) + 1);
    double height = sketch.paper(Sketch.SMALL + 1);
    Envelope around = seen.getEnvelopeInternal();
    Envelope inside = box(seen.getCentroid().getCoordinate(), width, height);
    if (around.contains(inside)) {
      return inside;
    }
    around.expandBy(2 * width, 4 * height);
    return spots
        .in(Shapes.rectangle(around), width, height)
        .map(place -> box(new Coordinate(place.x(), place.y()), width, height))
        .orElse(inside);
  }

  private static Envelope box(Coordinate middle, double width, double height) {
    Envelope box = new Envelope(middle);
    box.expandBy(width / 2, height / 2);
    return box;
  }
}
