package plycrag.layout.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.Shapes;
import plycrag.layout.skin.Axis;
import plycrag.units.Tape;
import plycrag.wall.Inserts;
import plycrag.wall.Pattern.Symmetry;

/**
 * Moves each line that no place clears all along to where it keeps most of its inserts: columns
 * first, unless they mirror each other, then rows; of equal places the nearest, then the lower one.
 */
final class PartlyBlockedLines {
  private final Inserts inserts;
  private final double least;
  private final InsertSurroundings surroundings;
  private final Tape tape;

  /**
   * @param inserts the pattern and its limits
   * @param least distance between neighbouring lines, mm
   * @param surroundings what stands in the way, with the members where they were set out
   * @param tape what is set out with
   */
  PartlyBlockedLines(Inserts inserts, double least, InsertSurroundings surroundings, Tape tape) {
    this.inserts = inserts;
    this.least = least;
    this.surroundings = surroundings;
    this.tape = tape;
  }

  /** A set-out with as many inserts kept as single moves of its unclear lines allow. */
  AreaSetOut of(AreaSetOut setOut) {
    boolean isMirrored = setOut.area().pattern().fit().symmetry() == Symmetry.LEFT_RIGHT;
    return along(Axis.ACROSS, isMirrored ? setOut : along(Axis.UP, setOut));
  }

  private AreaSetOut along(Axis axis, AreaSetOut setOut) {
    AreaSetOut best = setOut;
    for (int line : setOut.along(axis).unclear()) {
      AxisSetOut now = best.along(axis);
      List<Insert> asked = best.lines().on(axis, line);
      double place =
          candidates(now, line).stream()
              .min(Comparator.comparingLong(one -> lost(asked, axis, one)))
              .orElse(now.places().get(line));
      best = best.with(now.with(line, place));
    }
    return best;
  }

  /** Places within the greatest move and clear of the neighbouring lines, the nearest first. */
  private List<Double> candidates(AxisSetOut axis, int line) {
    double wanted = axis.task().lines().get(line).wanted();
    double step = tape.unit().markingGrid();
    List<Double> candidates = new ArrayList<>();
    for (int steps = 0; steps * step <= inserts.blocked().greatestMove(); steps++) {
      candidates.add(tape.snap(wanted - steps * step));
      candidates.add(tape.snap(wanted + steps * step));
    }
    candidates.removeIf(place -> !hasRoom(axis, line, place));
    return candidates;
  }

  private boolean hasRoom(AxisSetOut axis, int line, double place) {
    List<Double> places = axis.places();
    boolean below = line == 0 || place - places.get(line - 1) >= least;
    return below && (line == places.size() - 1 || places.get(line + 1) - place >= least);
  }

  /** How many of a line's inserts would be blocked with the line at a place. */
  private long lost(List<Insert> asked, Axis axis, double place) {
    return asked.stream()
        .map(insert -> moved(insert, axis, place))
        .filter(centre -> !surroundings.isClear(centre))
        .count();
  }

  private static Point moved(Insert insert, Axis axis, double place) {
    Point centre = insert.centre();
    return axis == Axis.UP
        ? Shapes.point(place, centre.getY())
        : Shapes.point(centre.getX(), place);
  }
}
