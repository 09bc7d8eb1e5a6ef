package plycrag.machining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import plycrag.document.Xy;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;

/**
 * What tells whether a sheet was square, zeroed, laid and worked true.
 *
 * <p>Before: every edge, and both diagonals. A sheet that is out of square by 3 mm over its width
 * differs in its diagonals by more than 2 mm wherever it is no longer than twice as wide. After:
 * from two edges to the holes that are farthest along them, and across both diagonals of these: a
 * sheet that lies turned by 3 mm over its length reads that much less at one end of its edge than
 * at the other.
 */
final class CheckMeasures {
  private CheckMeasures() {}

  /**
   * A distance to measure.
   *
   * @param distance mm
   */
  record Measure(String from, String to, double distance) {}

  /**
   * A hole with a letter on the picture.
   *
   * @param letter A lower left, B lower right, C upper left, D upper right
   * @param place on the sheet from its lower left corner, mm
   * @param name the hole's
   */
  record Mark(String letter, Xy place, String name) {}

  /** The sheet as bought. */
  static List<Measure> before(LaidSheet sheet) {
    double width = sheet.stock().width();
    double height = sheet.stock().height();
    double across = Math.sqrt(width * width + height * height);
    return List.of(
        new Measure("lower edge", "from end to end", width),
        new Measure("upper edge", "from end to end", width),
        new Measure("left edge", "from end to end", height),
        new Measure("right edge", "from end to end", height),
        new Measure("lower left corner", "upper right corner", across),
        new Measure("upper left corner", "lower right corner", across));
  }

  /** The holes nearest to the sheet's corners, each once; none where there are no holes. */
  static List<Mark> marks(LaidSheet sheet) {
    List<Mark> marks = new ArrayList<>();
    add("A", sheet, spot -> spot.x() + spot.y(), marks);
    add("B", sheet, spot -> spot.y() - spot.x(), marks);
    add("C", sheet, spot -> spot.x() - spot.y(), marks);
    add("D", sheet, spot -> -spot.x() - spot.y(), marks);
    return marks;
  }

  private static void add(
      String letter,
      LaidSheet sheet,
      ToDoubleFunction<MachinedHole.OnSheet> away,
      List<Mark> marks) {
    sheet.holes().stream()
        .min(Comparator.comparingDouble(hole -> away.applyAsDouble(hole.spot())))
        .map(hole -> new Mark(letter, place(hole), hole.name()))
        .filter(mark -> marks.stream().noneMatch(other -> other.place().equals(mark.place())))
        .ifPresent(marks::add);
  }

  private static Xy place(MachinedHole hole) {
    return new Xy(hole.spot().x(), hole.spot().y());
  }

  /** Of lettered holes where there are any, else of the first piece. */
  static List<Measure> after(LaidSheet sheet) {
    List<Mark> marks = marks(sheet);
    return marks.isEmpty() ? ofPiece(sheet.pieces().get(0)) : ofHoles(marks);
  }

  private static List<Measure> ofPiece(LaidPiece laid) {
    String piece = "piece " + laid.piece().mark();
    return List.of(
        new Measure(piece + ", left end", "right end", laid.box().getWidth()),
        new Measure(piece + ", lower end", "upper end", laid.box().getHeight()));
  }

  private static List<Measure> ofHoles(List<Mark> marks) {
    List<Measure> all = new ArrayList<>();
    for (Mark mark : marks) {
      all.add(new Measure("left edge", mark.letter(), mark.place().x()));
      all.add(new Measure("lower edge", mark.letter(), mark.place().y()));
    }
    for (int one = 0; one < marks.size(); one++) {
      for (int other = one + 1; other < marks.size(); other++) {
        if (isAcross(marks.get(one), marks.get(other)) || marks.size() == 2) {
          all.add(between(marks.get(one), marks.get(other)));
        }
      }
    }
    return all;
  }

  private static boolean isAcross(Mark one, Mark other) {
    String letters = one.letter() + other.letter();
    return letters.equals("AD") || letters.equals("BC");
  }

  private static Measure between(Mark one, Mark other) {
    double dx = one.place().x() - other.place().x();
    double dy = one.place().y() - other.place().y();
    return new Measure(one.letter(), other.letter(), Math.sqrt(dx * dx + dy * dy));
  }
}
