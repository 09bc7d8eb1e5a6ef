package plycrag.machining;

import java.util.Comparator;
import java.util.List;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;

/**
 * Three distances that tell whether a sheet was zeroed, laid and worked true: the lowest hole from
 * the left and from the lower edge, and from it to the hole that is farthest away, which no error
 * of scale or squareness leaves alone.
 */
final class CheckMeasures {
  private static final Comparator<MachinedHole> FROM_BELOW =
      Comparator.<MachinedHole>comparingDouble(hole -> hole.spot().y())
          .thenComparingDouble(hole -> hole.spot().x());

  private CheckMeasures() {}

  /**
   * A distance to measure.
   *
   * @param distance mm
   */
  record Measure(String from, String to, double distance) {}

  /** Of holes where there are any, else of the first piece; two where there is one hole alone. */
  static List<Measure> of(LaidSheet sheet) {
    return sheet.holes().isEmpty() ? ofPiece(sheet.pieces().get(0)) : ofHoles(sheet);
  }

  private static List<Measure> ofPiece(LaidPiece laid) {
    String piece = "piece " + laid.piece().mark();
    return List.of(
        new Measure(piece + ", left end", "right end", laid.box().getWidth()),
        new Measure(piece + ", lower end", "upper end", laid.box().getHeight()));
  }

  private static List<Measure> ofHoles(LaidSheet sheet) {
    List<MachinedHole> holes = sheet.inserts().isEmpty() ? sheet.holes() : sheet.inserts();
    MachinedHole first = holes.stream().min(FROM_BELOW).orElseThrow();
    MachinedHole far =
        holes.stream().max(Comparator.comparingDouble(hole -> apart(first, hole))).orElseThrow();
    List<Measure> fromEdges =
        List.of(
            new Measure("left edge", first.name(), first.spot().x()),
            new Measure("lower edge", first.name(), first.spot().y()));
    return far.equals(first)
        ? fromEdges
        : List.of(
            fromEdges.get(0),
            fromEdges.get(1),
            new Measure(first.name(), far.name(), apart(first, far)));
  }

  private static double apart(MachinedHole one, MachinedHole other) {
    double dx = one.spot().x() - other.spot().x();
    double dy = one.spot().y() - other.spot().y();
    return Math.sqrt(dx * dx + dy * dy);
  }
}
