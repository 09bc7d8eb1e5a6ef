package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.LineString;
import plycrag.document.Move;
import plycrag.document.Xy;
import plycrag.geometry.Shapes;
import plycrag.params.KeepOut;

/**
 * Lifts a tool's ways across to the safe height where they lead over a place to keep out of. Cuts
 * stay as they are: a rule has seen to it that they keep out.
 *
 * @param places on the sheet
 * @param radius of the tool, mm
 * @param safe Z of the height over clamps, at which the tool begins
 */
record LiftedOver(List<KeepOut> places, double radius, double safe) {
  /** What is left beside a place, mm. */
  private static final double BESIDE = 1;

  LiftedOver {
    places = List.copyOf(places);
  }

  /** The same moves, lifted where they must be. */
  List<Move> of(List<Move> moves, SheetOrigin origin) {
    List<Move> lifted = new ArrayList<>();
    Optional<Xy> at = Optional.empty();
    for (Move move : moves) {
      Optional<Xy> to = place(move);
      if (at.isPresent() && isWayAcross(move) && isOver(at.get(), to.orElseThrow(), origin)) {
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

  private boolean isOver(Xy from, Xy to, SheetOrigin origin) {
    LineString way =
        Shapes.line(
            from.x() + origin.x(), from.y() + origin.y(), to.x() + origin.x(), to.y() + origin.y());
    return places.stream()
        .map(place -> Shapes.rectangle(place.left(), place.low(), place.right(), place.high()))
        .anyMatch(area -> area.distance(way) < radius + BESIDE);
  }
}
