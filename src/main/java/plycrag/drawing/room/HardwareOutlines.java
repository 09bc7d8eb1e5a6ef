package plycrag.drawing.room;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.LineWork;
import plycrag.drawing.pen.Sketch;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Hulls;
import plycrag.geometry.Shapes;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.joints.Hardware;
import plycrag.layout.support.PlacedMember;

/** The hardware of a run's support, in fine lines. */
final class HardwareOutlines {
  static final String LEGEND = "Fine lines: hardware; marks and places in lists/hardware.csv.";

  private HardwareOutlines() {}

  /**
   * Draws what holds timber of a run's support.
   *
   * @param run the run's number, from 0
   * @param project from the run's axes to the drawing's
   * @return what is drawn
   */
  static List<LineString> draw(
      Sketch sketch, Layout layout, int run, Function<Vector3, Coordinate> project) {
    FloorAxes axes = layout.runs().get(run).get(0).facet().plane().floorAxes();
    Set<String> own =
        layout.standing().stream()
            .filter(placed -> placed.run() == run)
            .map(PlacedMember::member)
            .map(member -> member.mark())
            .collect(Collectors.toSet());
    List<LineString> lines =
        layout.hardware().stream()
            .filter(piece -> piece.members().stream().anyMatch(own::contains))
            .map(Hardware::form)
            .flatMap(form -> form.parts().stream())
            .map(part -> part.mapped(axes::fromRoom))
            .flatMap(part -> Shapes.edges(outline(part, project)).stream())
            .toList();
    lines.forEach(line -> LineWork.draw(sketch, Layers.HARDWARE, line));
    return lines;
  }

  private static Polygon outline(Solid part, Function<Vector3, Coordinate> project) {
    return Hulls.around(
        Stream.concat(part.near().stream(), part.far().stream()).map(project).toList());
  }
}
