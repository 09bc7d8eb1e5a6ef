package plycrag.drawing.template;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;
import plycrag.document.Xy;
import plycrag.drawing.flat.SheetOutline;
import plycrag.drawing.pen.Datum;
import plycrag.drawing.pen.FreeSpot;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.geometry.Shapes;
import plycrag.layout.Layout;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.standing.SheetDatum;

/**
 * Sheets that are drilled alike: one template serves them all.
 *
 * @param sheets of one size, one outline and the same holes; at least one
 * @param datum the edges from which all of them are measured
 */
record TemplateSheet(List<LaidSheet> sheets, SheetDatum datum) {
  TemplateSheet {
    sheets = List.copyOf(sheets);
  }

  /** What makes two sheets alike. */
  private record Look(SheetDatum datum, List<SheetOutline> outlines, List<Bore> bores) {
    static Look of(Layout layout, LaidSheet sheet) {
      List<SheetOutline> outlines = sheet.pieces().stream().map(SheetOutline::of).toList();
      List<Bore> bores = sheet.inserts().stream().map(Bore::of).toList();
      return new Look(SheetDatum.of(layout, sheet), outlines, bores);
    }
  }

  /** A hole on a sheet. */
  private record Bore(double x, double y, double diameter) {
    static Bore of(MachinedHole hole) {
      return new Bore(hole.spot().x(), hole.spot().y(), hole.bore().diameter());
    }
  }

  /** Sheets with inserts, those that are alike together, in the order of their marks. */
  static List<TemplateSheet> of(Layout layout) {
    List<Look> looks = new ArrayList<>();
    List<List<LaidSheet>> alike = new ArrayList<>();
    for (LaidSheet sheet : layout.sheets()) {
      if (!sheet.inserts().isEmpty()) {
        Look look = Look.of(layout, sheet);
        if (!looks.contains(look)) {
          looks.add(look);
          alike.add(new ArrayList<>());
        }
        alike.get(looks.indexOf(look)).add(sheet);
      }
    }
    return IntStream.range(0, looks.size())
        .mapToObj(at -> new TemplateSheet(alike.get(at), looks.get(at).datum()))
        .toList();
  }

  /** One of them. */
  LaidSheet first() {
    return sheets.get(0);
  }

  /** Its marks: {@code sheet S1}, {@code sheets S1, S3}. */
  String words() {
    return words(sheets);
  }

  /** The marks of sheets. */
  static String words(List<LaidSheet> sheets) {
    String marks = String.join(", ", sheets.stream().map(LaidSheet::mark).toList());
    return (sheets.size() == 1 ? "sheet " : "sheets ") + marks;
  }

  /** Boxes of the edges of the sheet and of its pieces, mm on the sheet. */
  List<Envelope> edges() {
    List<Envelope> edges = new ArrayList<>();
    double width = first().stock().width();
    FreeSpot.addEdges(Shapes.rectangle(0, 0, width, first().stock().height()), edges);
    for (LaidPiece laid : first().pieces()) {
      FreeSpot.addEdges(laid.placement().of(laid.piece().blank()), edges);
      FreeSpot.addEdges(laid.placement().of(laid.piece().outline()), edges);
    }
    return edges;
  }

  /** Where a sheet as bought is measured from, if not from its lower left corner. */
  List<String> asBought() {
    return datum.isOdd()
        ? List.of(
            "As bought: the filled corner is the sheet's "
                + datum.corner()
                + ", where it meets a seam.")
        : List.of();
  }

  /** What its file is called. */
  String name() {
    return "sheet-" + first().mark();
  }

  /** The centres of its holes. */
  List<Xy> centres() {
    return first().inserts().stream()
        .map(hole -> new Xy(hole.spot().x(), hole.spot().y()))
        .toList();
  }

  /** The largest of its holes, mm. */
  double diameter() {
    return first().inserts().stream()
        .mapToDouble(hole -> hole.bore().diameter())
        .max()
        .orElseThrow();
  }

  /** Its edges, holes and datum, true to size. */
  void draw(Sketch sketch) {
    sketch.path(Layers.CONTEXT, SheetOutline.whole(first().stock()));
    for (LaidPiece laid : first().pieces()) {
      SheetOutline outline = SheetOutline.of(laid);
      outline.drawCut(sketch, Layers.OUTLINE);
      outline.drawFront(sketch);
    }
    Datum.inside(sketch, datum);
  }
}
