package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Shapes;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.standing.FallZone;
import plycrag.wall.Facet;
import plycrag.wall.room.Room;

/**
 * The floor that mats cover, seen from above: from the foot of each run of facets to beyond its
 * outermost edge, and past the free ends of the wall.
 */
final class PlanMats {
  private final Layout layout;
  private final Room room;

  PlanMats(Layout layout) {
    this.layout = layout;
    this.room = layout.wall().room();
  }

  /** The mats of all runs, as one where they meet; none where no mats are told. */
  List<Polygon> areas() {
    if (room.mat().thickness().isEmpty()) {
      return List.of();
    }
    List<Polygon> each = new ArrayList<>();
    for (int run = 0; run < layout.runs().size(); run++) {
      each.add(area(run));
    }
    return Shapes.areas(Shapes.together(each));
  }

  private Polygon area(int number) {
    List<Facet> run = layout.runs().get(number).stream().map(FacetLayout::facet).toList();
    FallZone zone = FallZone.of(layout, run);
    double front = room.mat().front().orElse(zone.clear());
    Facet lowest = run.get(0);
    boolean isFirst = number == 0;
    boolean isLast = number == layout.runs().size() - 1;
    double left = isFirst ? -aside(front, room.sides().left()) : 0;
    double right = lowest.width() + (isLast ? aside(front, room.sides().right()) : 0);
    FloorAxes axes = lowest.plane().floorAxes();
    List<Coordinate> corners =
        Stream.of(
                new Vector3(left, zone.foot(), 0),
                new Vector3(right, zone.foot(), 0),
                new Vector3(right, zone.outermost() + front, 0),
                new Vector3(left, zone.outermost() + front, 0))
            .map(axes::toRoom)
            .map(place -> new Coordinate(place.x(), -place.y()))
            .toList();
    return Shapes.polygon(corners);
  }

  /** How far mats reach past an end: as told, else as in front, or to what ends the room. */
  private double aside(double front, Optional<Double> end) {
    return room.mat().side().orElseGet(() -> Math.min(front, end.orElse(front)));
  }
}
