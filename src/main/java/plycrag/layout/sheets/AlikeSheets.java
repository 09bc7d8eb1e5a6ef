package plycrag.layout.sheets;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Geometry;

/**
 * Which sheets are laid, cut and drilled the same, so that one drawing, one setting of the saw and
 * one program does for all of them.
 */
public final class AlikeSheets {
  private final List<LaidSheet> sheets;

  /**
   * Copies the sheets.
   *
   * @param sheets in the order of their marks
   */
  public AlikeSheets(List<LaidSheet> sheets) {
    this.sheets = List.copyOf(sheets);
  }

  /** The first sheet that is like this one, if it is an earlier one. */
  public Optional<LaidSheet> earlier(LaidSheet sheet) {
    LaidSheet first =
        sheets.stream().filter(other -> isLike(other, sheet)).findFirst().orElseThrow();
    return first.mark().equals(sheet.mark()) ? Optional.empty() : Optional.of(first);
  }

  /** The marks of all that are like this one, its own among them. */
  public List<String> marks(LaidSheet sheet) {
    return sheets.stream().filter(other -> isLike(other, sheet)).map(LaidSheet::mark).toList();
  }

  private static boolean isLike(LaidSheet one, LaidSheet other) {
    return one.faceUp() == other.faceUp()
        && one.stock().kind().equals(other.stock().kind())
        && one.stock().upright() == other.stock().upright()
        && one.pieces().size() == other.pieces().size()
        && edges(one).equals(edges(other))
        && holes(one).equals(holes(other));
  }

  /** What is cut and what is bevelled, in an order that tells nothing of marks. */
  private static List<Geometry> edges(LaidSheet sheet) {
    return sheet.pieces().stream()
        .flatMap(laid -> laid.edges().stream())
        .map(Geometry::norm)
        .sorted()
        .toList();
  }

  private static Set<List<Double>> holes(LaidSheet sheet) {
    return sheet.holes().stream()
        .map(
            hole ->
                List.of(
                    hole.spot().x(), hole.spot().y(), hole.bore().diameter(), hole.bore().depth()))
        .collect(Collectors.toSet());
  }
}
