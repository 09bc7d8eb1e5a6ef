package plycrag.layout.skin;

import java.util.List;
import plycrag.wall.Frame;
import plycrag.wall.Frame.EdgeStuds;
import plycrag.wall.Frame.SeamBacking;

/**
 * Timber behind an edge or a seam, across it.
 *
 * @param low where it begins, mm
 * @param high where it ends, mm
 * @param depth how far it reaches behind the sheets, mm
 * @param fixity what keeps it there
 */
public record Backing(double low, double high, double depth, Fixity fixity) {

  /** The members, side by side, that back a seam. */
  public static List<Backing> of(Seam seam, Frame frame) {
    double middle = seam.middle();
    double breadth = frame.breadth();
    double depth = frame.depth();
    SeamBacking kind = frame.seams();
    return switch (kind) {
      case DOUBLED ->
          List.of(
              new Backing(middle - breadth, middle, depth, Fixity.SEAM),
              new Backing(middle, middle + breadth, depth, Fixity.SEAM));
      case FLAT ->
          List.of(new Backing(middle - depth / 2, middle + depth / 2, breadth, Fixity.SEAM));
      case SHARED ->
          List.of(new Backing(middle - breadth / 2, middle + breadth / 2, depth, Fixity.SEAM));
    };
  }

  /** How many studs stand side by side at an upright side. */
  public static int edgeCount(Frame frame) {
    return frame.edgeStuds() == EdgeStuds.DOUBLED ? 2 : 1;
  }

  /** One that begins at a place. */
  public static Backing from(double low, Frame frame, Fixity fixity) {
    return new Backing(low, low + frame.breadth(), frame.depth(), fixity);
  }

  /** Half way across, mm. */
  public double middle() {
    return (low + high) / 2;
  }
}
