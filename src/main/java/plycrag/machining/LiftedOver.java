package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.document.Move;
import plycrag.document.Xy;
import plycrag.geometry.Shapes;
import plycrag.solve.tour.Metric;
import plycrag.wall.machine.KeepOut;

/**
 * Lifts a tool's ways across to the safe height where they lead over a place to keep out of, and
 * tells tours what that costs. Cuts stay as they are: a rule has seen to it that they keep out.
 */
final class LiftedOver {
  /** What is left beside a place, mm. */
  private static final double BESIDE = 1;

  private final List<Place> places = new ArrayList<>();
  private final double radius;
  private final double safe;
  private final SheetOrigin origin;

  /**
   * A place on the sheet.
   *
   * @param near what a way that leads over it cannot lie outside of
   */
  private record Place(Polygon area, Envelope near) {}

  /**
   * For one tool.
   *
   * @param keepOuts on the sheet
   * @param radius of the tool, mm
   * @param safe Z of the height over clamps, at which the tool begins
   * @param origin from where its ways are counted
   */
  LiftedOver(List<KeepOut> keepOuts, double radius, double safe, SheetOrigin origin) {
    this.radius = radius;
    this.safe = safe;
    this.origin = origin;
    for (KeepOut place : keepOuts) {
      Polygon area =
          Shapes.rectangle(
              place.corner().left(), place.corner().low(), place.right(), place.high());
      Envelope near = area.getEnvelopeInternal().copy();
      near.expandBy(radius + BESIDE);
      places.add(new Place(area, near));
    }
  }

  /**
   * How far a tool goes from hole to hole, up to the safe height and down again where it must be
   * lifted. The first way, from where X and Y are zero, is at that height in any case.
   *
   * @param clear Z of the height between holes
   */
  Metric metric(double clear) {
    double lift = 2 * (safe - clear);
    if (places.isEmpty() || lift <= 0) {
      return Metric.STRAIGHT;
    }
    return (fromX, fromY, toX, toY) -> {
      double way = Metric.STRAIGHT.length(fromX, fromY, toX, toY);
      boolean first = (fromX == 0 && fromY == 0) || (toX == 0 && toY == 0);
      return !first && isOver(new Xy(fromX, fromY), new Xy(toX, toY)) ? way + lift : way;
    };
  }

  /** The same moves, lifted where they must be. */
  List<Move> of(List<Move> moves) {
    List<Move> lifted = new ArrayList<>();
    Optional<Xy> at = Optional.empty();
    for (Move move : moves) {
      Optional<Xy> to = place(move);
      if (at.isPresent() && isWayAcross(move) && isOver(at.get(), to.orElseThrow())) {
        lifted.add(new Move.RapidZ(safe));
      }
      lifted.add(move);
      at = to.isPresent() ? to : at;
    }
    return lifted;
  }

  private static boolean isWayAcross(Move move) {
    return move instanceof Move.RapidXy || move instanceof Move.DrillCycle;
  }

  /** Where a move ends, if it leads across. */
  private static Optional<Xy> place(Move move) {
    if (move instanceof Move.RapidXy rapid) {
      return Optional.of(new Xy(rapid.x(), rapid.y()));
    } else if (move instanceof Move.DrillCycle cycle) {
      return Optional.of(cycle.place());
    } else if (move instanceof Move.Cut cut) {
      return Optional.of(cut.to().flat());
    } else if (move instanceof Move.Arc arc) {
      return Optional.of(arc.to().flat());
    }
    return Optional.empty();
  }

  private boolean isOver(Xy from, Xy to) {
    Coordinate begin = new Coordinate(from.x() + origin.x(), from.y() + origin.y());
    Coordinate end = new Coordinate(to.x() + origin.x(), to.y() + origin.y());
    for (Place place : places) {
      // Of millions of ways that a tour considers few lie near: the box alone dismisses the others.
      if (place.near().intersects(begin, end)
          && place.area().distance(Shapes.line(begin.x, begin.y, end.x, end.y)) < radius + BESIDE) {
        return true;
      }
    }
    return false;
  }
}
