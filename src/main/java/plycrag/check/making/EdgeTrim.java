package plycrag.check.making;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Severity;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;

/** Where the edges of sheets are to be trimmed, there is something left to trim. */
public final class EdgeTrim implements Rule {

  @Override
  public String name() {
    return "edge-trim";
  }

  @Override
  public String promise() {
    return "Where the edges of sheets are not to be used, no piece needs them.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    double margin = layout.wall().nesting().margin();
    return layout.sheets().stream()
        .flatMap(sheet -> finding(sheet, margin, layout).stream())
        .toList();
  }

  private Optional<Finding> finding(LaidSheet sheet, double margin, Layout layout) {
    Envelope inner = sheet.area();
    inner.expandBy(Tolerance.TOUCH - margin);
    String pieces =
        sheet.pieces().stream()
            .filter(laid -> !inner.contains(laid.box()))
            .map(LaidPiece::piece)
            .map(piece -> piece.mark())
            .collect(Collectors.joining(", "));
    return pieces.isEmpty() ? Optional.empty() : Optional.of(told(sheet, pieces, margin, layout));
  }

  private Finding told(LaidSheet sheet, String pieces, double margin, Layout layout) {
    return new WholeWall(name(), Severity.WARNING)
        .finding(
            layout.wall().tape().size(margin)
                + " along every edge of a sheet is not to be used, and "
                + pieces
                + " on sheet "
                + sheet.mark()
                + " needs it: nothing is left there to trim or to clamp",
            "take larger sheets ([sheet] length, width, or a [[stock-sheet]]) or smaller pieces"
                + " ([sheet] lay), or use sheets to their edges ([nesting] edge-trim = 0, hold-down"
                + " = 0)");
  }
}
