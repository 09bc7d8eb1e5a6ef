package plycrag.check.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.sheets.SheetPlan;
import plycrag.layout.skin.Axis;
import plycrag.layout.skin.Skin;
import plycrag.units.Count;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.Sheet;

/**
 * A facet that is a few millimetres larger than whole sheets or equal parts of one may cost a sheet
 * or more. Facets whose sheets go beyond such a size by no more than a hundredth are laid out
 * smaller, the sheets alone, and told if that takes fewer.
 */
public final class SheetsSaved implements Rule {
  /** What is given up at most, of the size (a choice). */
  private static final double MOST = 0.01;

  /** A sheet is divided into no more equal parts than this (a choice). */
  private static final int PARTS = 3;

  /** No more facets of a wall are tried, each way by itself, and none at more sizes. */
  private static final int FACETS = 4;

  private static final int SIZES = 2;

  @Override
  public String name() {
    return "sheet-saved";
  }

  @Override
  public String promise() {
    return "Where a facet a few millimetres smaller would take fewer sheets, it is told.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<List<Trial>> trials =
        IntStream.range(0, layout.facets().size())
            .boxed()
            .flatMap(at -> Stream.of(Axis.UP, Axis.ACROSS).map(way -> trials(layout, at, way)))
            .filter(sizes -> !sizes.isEmpty())
            .limit(FACETS)
            .toList();
    if (trials.isEmpty()) {
      return List.of();
    }
    List<Skin> skins =
        layout.facets().stream().map(facet -> Skin.of(facet.facet(), layout.wall())).toList();
    return trials.stream()
        .flatMap(
            sizes ->
                sizes.stream().flatMap(trial -> finding(trial, skins, layout).stream()).limit(1))
        .toList();
  }

  /**
   * A facet to be laid out smaller.
   *
   * @param facet its number
   * @param way along which
   * @param less by how much, mm
   */
  private record Trial(int facet, Axis way, double less) {
    Facet smaller(Facet facet) {
      double width = facet.width() - (way == Axis.ACROSS ? less : 0);
      double length = facet.length() - (way == Axis.UP ? less : 0);
      return new Facet(
          facet.name(),
          facet.angle(),
          Shapes.rectangle(0, 0, width, length),
          facet.cutouts(),
          facet.folds(),
          facet.plane(),
          facet.told().with(length));
    }
  }

  /** The least first. */
  private static List<Trial> trials(Layout layout, int at, Axis way) {
    FacetLayout facet = layout.facets().get(at);
    if (!facet.facet().isRectangle()) {
      return List.of();
    }
    Envelope blanks = new Envelope();
    facet.pieces().forEach(piece -> blanks.expandToInclude(piece.blank().getEnvelopeInternal()));
    double size = way.size(blanks);
    Tape tape = layout.wall().tape();
    return targets(layout, size)
        .map(target -> tape.snapUp(size - target))
        .filter(less -> less > 0 && Tolerance.atMost(less, MOST * size))
        .distinct()
        .sorted()
        .limit(SIZES)
        .map(less -> new Trial(at, way, less))
        .toList();
  }

  /** The greatest lengths up to one that whole sheets, or equal parts of one, fill. */
  private static Stream<Double> targets(Layout layout, double size) {
    Sheet sheet = layout.wall().sheet();
    double seam = sheet.seams().gap();
    double kerf = layout.wall().nesting().gap();
    List<Double> targets = new ArrayList<>();
    for (double side : List.of(sheet.length(), sheet.width())) {
      double sheets = Tolerance.wholeDown((size + seam) / (side + seam));
      targets.add(sheets * (side + seam) - seam);
      for (int parts = 2; parts <= PARTS; parts++) {
        targets.add((side - (parts - 1) * kerf) / parts);
      }
    }
    return targets.stream().filter(target -> target > 0);
  }

  private Optional<Finding> finding(Trial trial, List<Skin> skins, Layout layout) {
    Facet facet = layout.facets().get(trial.facet()).facet();
    List<Skin> smaller = new ArrayList<>(skins);
    smaller.set(trial.facet(), Skin.of(trial.smaller(facet), layout.wall()));
    int taken = layout.sheets().size();
    int needed = SheetPlan.count(layout.wall(), smaller);
    return needed < taken
        ? Optional.of(told(trial, facet, taken, needed, layout.wall().tape()))
        : Optional.empty();
  }

  private Finding told(Trial trial, Facet facet, int taken, int needed, Tape tape) {
    boolean up = trial.way() == Axis.UP;
    String less = tape.text(trial.less()) + (up ? " shorter" : " narrower");
    return new WholeWall(name(), Severity.NOTE)
        .finding(
            facet.name(),
            "",
            new Measure(-trial.less(), 0),
            "with facet "
                + facet.name()
                + " "
                + less
                + " the wall takes "
                + Count.of(needed, "sheet")
                + " instead of "
                + taken,
            "make it "
                + less
                + " if you can ("
                + (up ? facet.lengthKey() : "[[facet]] width")
                + ")");
  }
}
