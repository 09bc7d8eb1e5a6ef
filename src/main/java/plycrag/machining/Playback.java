package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import plycrag.document.Move;
import plycrag.document.Xy;
import plycrag.document.Xyz;
import plycrag.geometry.Round;

/** A program's moves as the ways that the tool's tip goes, from where Z is first known. */
final class Playback {
  private final List<Way> ways = new ArrayList<>();
  private Xyz at;

  private Playback() {}

  /**
   * A way.
   *
   * @param length mm
   * @param feed mm/min; 0 as fast as the machine can
   */
  record Way(Xyz from, Xyz to, double length, double feed) {
    boolean isRapid() {
      return feed == 0;
    }

    /** Whether it leads across. */
    boolean isAcross() {
      return from.x() != to.x() || from.y() != to.y();
    }
  }

  /** The ways, in order; the first raises Z above the program's X and Y zero. */
  static List<Way> of(List<Move> moves) {
    Playback playback = new Playback();
    moves.forEach(playback::play);
    return List.copyOf(playback.ways);
  }

  private void play(Move move) {
    if (move instanceof Move.DrillCycle cycle) {
      cycle.steps(at.z()).forEach(this::play);
    } else if (move instanceof Move.RapidZ rapid) {
      at = at == null ? new Xyz(0, 0, rapid.z()) : at;
      straight(at.at(rapid.z()), 0);
    } else if (move instanceof Move.RapidXy rapid) {
      straight(new Xyz(rapid.x(), rapid.y(), at.z()), 0);
    } else if (move instanceof Move.Plunge plunge) {
      straight(at.at(plunge.z()), plunge.feed());
    } else if (move instanceof Move.Cut cut) {
      straight(cut.to(), cut.feed());
    } else if (move instanceof Move.Arc arc) {
      round(arc);
    }
  }

  private void straight(Xyz to, double feed) {
    go(to, length(flat(at, to), to.z() - at.z()), feed);
  }

  private void round(Move.Arc arc) {
    Xy centre = arc.centre();
    double radius = length(arc.to().x() - centre.x(), arc.to().y() - centre.y());
    double along = new Round(centre.x(), centre.y(), radius).arc(flat(at, arc.to()));
    go(arc.to(), length(along, arc.to().z() - at.z()), arc.feed());
  }

  private void go(Xyz to, double length, double feed) {
    ways.add(new Way(at, to, length, feed));
    at = to;
  }

  private static double flat(Xyz from, Xyz to) {
    return length(to.x() - from.x(), to.y() - from.y());
  }

  private static double length(double one, double other) {
    return Math.sqrt(one * one + other * other);
  }
}
