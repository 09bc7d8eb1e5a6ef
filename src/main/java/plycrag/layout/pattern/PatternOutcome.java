package plycrag.layout.pattern;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Point;
import plycrag.layout.skin.Axis;
import plycrag.wall.Pattern;

/**
 * How the pattern of a facet, or of a zone of it, came to its places.
 *
 * @param zone its name; empty for the facet's own pattern
 * @param pattern how inserts are set out
 * @param axes the columns, then the rows; none of a pattern without lines
 * @param moves of single inserts that stand in no line
 * @param asked inserts that the pattern asks for
 * @param blocked those of them with something in their way, had nothing been moved
 */
public record PatternOutcome(
    String zone, Pattern pattern, List<OfAxis> axes, List<Move> moves, int asked, int blocked) {
  /** Copies the lists. */
  public PatternOutcome {
    axes = List.copyOf(axes);
    moves = List.copyOf(moves);
  }

  /**
   * A single insert that moved.
   *
   * @param wanted where it was asked for
   * @param place where it is
   */
  public record Move(Point wanted, Point place) {}

  /**
   * The columns or the rows.
   *
   * @param lines the way they run
   * @param moves of lines that moved or had something in their way
   * @param count how many lines there are
   * @param members where movable members stood first
   * @param settled where they stand, mm
   * @param advice for a grid that something stands in the way of
   */
  public record OfAxis(
      Axis lines,
      List<LineMove> moves,
      int count,
      List<Double> members,
      List<Double> settled,
      Optional<Advice> advice) {
    /** Copies the lists. */
    public OfAxis {
      moves = List.copyOf(moves);
      members = List.copyOf(members);
      settled = List.copyOf(settled);
    }
  }

  /**
   * A line.
   *
   * @param number from 1, from the left or from below
   * @param wanted where it was asked for, mm
   * @param place where it is, mm
   * @param blockers what stood in its way there, the worst first, before anything was moved
   * @param isClear whether it has a place by the chosen way: one clear all along, or, where nothing
   *     is to be changed, any
   * @param conflict where it is not clear: what keeps it from every place within its greatest move,
   *     none of which could be left out
   */
  public record LineMove(
      int number,
      double wanted,
      double place,
      List<InTheWay> blockers,
      boolean isClear,
      List<String> conflict) {
    /** Copies the lists. */
    public LineMove {
      blockers = List.copyOf(blockers);
      conflict = List.copyOf(conflict);
    }

    /** How far it was moved to the right, or up, mm. */
    public double move() {
      return place - wanted;
    }
  }

  /**
   * What stood in the way of a line.
   *
   * @param name in words
   * @param shortfall how much of the required distance was missing, mm
   */
  public record InTheWay(String name, double shortfall) {}

  /**
   * What even grid would clear everything with the members where they were laid out first.
   *
   * @param pitch asked for, mm
   * @param conflict what no start clears at that pitch, none of which could be left out; empty if
   *     some start does
   * @param nearest the grid with the nearest pitch and start that clears everything
   */
  public record Advice(double pitch, List<String> conflict, Optional<Even> nearest) {
    /** Copies the list. */
    public Advice {
      conflict = List.copyOf(conflict);
    }
  }

  /**
   * Lines at one distance from each other.
   *
   * @param start the first, mm
   * @param pitch between neighbours, mm
   */
  public record Even(double start, double pitch) {}
}
