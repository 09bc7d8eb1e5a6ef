package plycrag.files.dxf;

import java.util.List;
import plycrag.document.Dash;

/** Linetypes, under the names that CAD programs give to such lines. */
final class Linetypes {
  private final TagWriter tags;
  private final int scale;

  /**
   * Writes the linetypes of one drawing.
   *
   * @param tags where to
   * @param scale what the dashes' paper millimetres are multiplied by
   */
  Linetypes(TagWriter tags, int scale) {
    this.tags = tags;
    this.scale = scale;
  }

  static String name(Dash dash) {
    return switch (dash) {
      case SOLID -> "CONTINUOUS";
      case DASHED -> "DASHED";
      case DOTTED -> "DOT";
      case CHAIN -> "CENTER";
    };
  }

  /** Those that every file has; the first two are not written in R12. */
  void builtIn() {
    if (tags.since2000()) {
      start("BYBLOCK", List.of());
      start("BYLAYER", List.of());
    }
    start(name(Dash.SOLID), List.of());
  }

  /** A linetype of dashes and gaps, a gap being a length below zero. */
  void pattern(Dash dash) {
    List<Double> lengths = dash.pattern();
    start(name(dash), lengths);
    for (int i = 0; i < lengths.size(); i++) {
      tags.real(49, lengths.get(i) * (i % 2 == 0 ? scale : -scale));
      if (tags.since2000()) {
        tags.whole(74, 0);
      }
    }
  }

  private void start(String name, List<Double> lengths) {
    double total = lengths.stream().mapToDouble(Double::doubleValue).sum();
    tags.record("LTYPE", Handles.LTYPE_TABLE);
    tags.marker("AcDbSymbolTableRecord").marker("AcDbLinetypeTableRecord");
    tags.text(2, name).whole(70, 0).text(3, "").whole(72, 'A');
    tags.whole(73, lengths.size()).real(40, total * scale);
  }
}
