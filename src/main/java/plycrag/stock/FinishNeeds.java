package plycrag.stock;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.locationtech.jts.geom.Polygon;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.skin.Piece;
import plycrag.prices.Article;
import plycrag.stock.Need.Amount;
import plycrag.units.Decimal;

/**
 * What the sheets are finished with. Coverages are common practice, no source; the tin says better.
 */
final class FinishNeeds {
  private static final String GROUP = "finish";
  private static final double SQUARE_METRE = 1e6;
  private static final int COATS = 2;

  /** On sanded plywood, m² a litre and coat. */
  private static final double PAINT = 10;

  /** On cut edges, which drink more, m² a litre and coat. */
  private static final double SEALANT = 5;

  /** m² to a sheet of sandpaper. */
  private static final double SANDPAPER = 2;

  private final Layout layout;

  /**
   * Measures one wall's sheets.
   *
   * @param layout whose sheets
   */
  FinishNeeds(Layout layout) {
    this.layout = layout;
  }

  List<Need> needs() {
    double face = square(faces().stream().mapToDouble(Polygon::getArea).sum());
    double edges = square(edgeLength() * layout.wall().sheet().thickness());
    BigDecimal sandpaper = BigDecimal.valueOf(Math.ceil(face / SANDPAPER));
    return List.of(
        litres("paint for the climbing face", face, PAINT, Article.PAINT),
        litres("sealer for the cut edges", edges, SEALANT, Article.SEALANT),
        new Need(
            GROUP,
            "sandpaper, 120 grit",
            "",
            new Amount(sandpaper, "piece", 0),
            Sourcing.of(Article.SANDPAPER),
            "a sheet for " + whole(SANDPAPER) + " m²; common practice, no source"));
  }

  private static Need litres(String what, double area, double coverage, Article article) {
    BigDecimal litres =
        BigDecimal.valueOf(area * COATS / coverage).setScale(1, RoundingMode.CEILING);
    String note =
        COATS
            + " coats, "
            + whole(coverage)
            + " m² a litre and coat; common practice, no source: the tin says better";
    return new Need(GROUP, what, "", new Amount(litres, "litre", 0), Sourcing.of(article), note);
  }

  private List<Polygon> faces() {
    return layout.facets().stream()
        .flatMap(facet -> facet.pieces().stream())
        .map(Piece::outline)
        .toList();
  }

  /** Around every piece and its openings, mm. */
  private double edgeLength() {
    return layout.facets().stream()
        .map(FacetLayout::pieces)
        .flatMap(List::stream)
        .mapToDouble(piece -> piece.blank().getLength())
        .sum();
  }

  private static double square(double millimetres) {
    return millimetres / SQUARE_METRE;
  }

  private static String whole(double number) {
    return Decimal.of(number, 0);
  }
}
