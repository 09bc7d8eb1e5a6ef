package plycrag.layout;

import java.util.List;
import plycrag.params.FrameParameters;
import plycrag.params.FrameParameters.EdgeStuds;
import plycrag.params.FrameParameters.SeamBacking;

/**
 * Timber behind an edge or a seam, across it.
 *
 * @param low where it begins, mm
 * @param high where it ends, mm
 * @param depth how far it reaches behind the sheets, mm
 * @param hold what keeps it there
 */
record Backing(double low, double high, double depth, Hold hold) {

  /** The members, side by side, that back a seam. */
  static List<Backing> of(Seam seam, FrameParameters frame) {
    double middle = seam.middle();
    double breadth = frame.breadth();
    double depth = frame.depth();
    SeamBacking kind = frame.seams();
    return switch (kind) {
      case DOUBLED ->
          List.of(
              new Backing(middle - breadth, middle, depth, Hold.SEAM),
              new Backing(middle, middle + breadth, depth, Hold.SEAM));
      case FLAT -> List.of(new Backing(middle - depth / 2, middle + depth / 2, breadth, Hold.SEAM));
      case SHARED ->
          List.of(new Backing(middle - breadth / 2, middle + breadth / 2, depth, Hold.SEAM));
    };
  }

  /** How many studs stand side by side at an upright side. */
  static int edgeCount(FrameParameters frame) {
    return frame.edgeStuds() == EdgeStuds.DOUBLED ? 2 : 1;
  }

  /** One that begins at a place. */
  static Backing from(double low, FrameParameters frame, Hold hold) {
    return new Backing(low, low + frame.breadth(), frame.depth(), hold);
  }

  /** Half way across, mm. */
  double middle() {
    return (low + high) / 2;
  }
}
