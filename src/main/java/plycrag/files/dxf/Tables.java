package plycrag.files.dxf;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import plycrag.document.Dash;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Layer;
import plycrag.document.Pen;
import plycrag.document.Xy;

/** The section of tables: what must be declared before entities use it. */
final class Tables {
  static final String LAYER_0 = "0";
  static final String STYLE = "STANDARD";

  private static final String RECORD = "AcDbSymbolTableRecord";

  /** Width by height of the viewport, as of a common screen. */
  private static final double ASPECT = 1.5;

  /** Leaves a margin about what is shown. */
  private static final double MARGIN = 1.05;

  private final TagWriter tags;
  private final Drawing drawing;

  /**
   * Writes the tables of one drawing.
   *
   * @param tags where to
   * @param drawing whose tables
   */
  Tables(TagWriter tags, Drawing drawing) {
    this.tags = tags;
    this.drawing = drawing;
  }

  void write() {
    tags.section("TABLES");
    viewport();
    linetypes();
    layers();
    style();
    empty("VIEW", Handles.VIEW_TABLE);
    empty("UCS", Handles.UCS_TABLE);
    application();
    dimensions();
    Spaces.records(tags);
    tags.endSection();
  }

  /** Starts a table of so many records. */
  static void open(TagWriter tags, String name, int handle, int records) {
    tags.text(0, "TABLE").text(2, name).handle(5, handle).handle(330, Handles.NONE);
    tags.marker("AcDbSymbolTable").whole(70, records);
  }

  private void close() {
    tags.text(0, "ENDTAB");
  }

  private void empty(String name, int handle) {
    open(tags, name, handle, 0);
    close();
  }

  /** The active viewport; without it some readers open an empty window. */
  private void viewport() {
    open(tags, "VPORT", Handles.VPORT_TABLE, 1);
    tags.record("VPORT", Handles.VPORT_TABLE).marker(RECORD).marker("AcDbViewportTableRecord");
    tags.text(2, "*ACTIVE").whole(70, 0);
    Extent extent = drawing.extent();
    double height = Math.max(extent.height(), extent.width() / ASPECT) * MARGIN;
    Xy middle = new Xy((extent.left() + extent.right()) / 2, (extent.low() + extent.high()) / 2);
    tags.flat(10, new Xy(0, 0)).flat(11, new Xy(1, 1)).flat(12, middle);
    tags.flat(13, new Xy(0, 0)).flat(14, new Xy(10, 10)).flat(15, new Xy(10, 10));
    tags.up(16).place(17, new Xy(0, 0)).real(40, height).real(41, ASPECT);
    tags.real(42, 50).real(43, 0).real(44, 0).real(50, 0).real(51, 0);
    tags.whole(71, 0).whole(72, 100).whole(73, 1).whole(74, 3);
    tags.whole(75, 0).whole(76, 0).whole(77, 0).whole(78, 0);
    close();
  }

  private void linetypes() {
    Linetypes linetypes = new Linetypes(tags, drawing.scale());
    Set<Dash> dashes = new TreeSet<>();
    drawing.layers().forEach(layer -> dashes.add(layer.pen().dash()));
    dashes.remove(Dash.SOLID);
    open(tags, "LTYPE", Handles.LTYPE_TABLE, dashes.size() + (tags.since2000() ? 3 : 1));
    linetypes.builtIn();
    dashes.forEach(linetypes::pattern);
    close();
  }

  private void layers() {
    Map<String, Layer> layers = declared();
    open(tags, "LAYER", Handles.LAYER_TABLE, layers.size());
    layers.values().forEach(this::layer);
    close();
  }

  /** Layer 0, which every file has, then those in use. */
  private Map<String, Layer> declared() {
    Map<String, Layer> used = new LinkedHashMap<>();
    for (Layer layer : drawing.layers()) {
      Layer other = used.putIfAbsent(layer.name(), layer);
      if (other != null && !other.equals(layer)) {
        throw new IllegalArgumentException("layer " + layer.name() + " has two pens");
      }
    }
    Map<String, Layer> declared =
        new LinkedHashMap<>(Map.of(LAYER_0, new Layer(LAYER_0, Pen.FINE)));
    declared.putAll(used);
    return declared;
  }

  private void layer(Layer layer) {
    Pen pen = layer.pen();
    tags.record("LAYER", Handles.LAYER_TABLE).marker(RECORD).marker("AcDbLayerTableRecord");
    tags.text(2, layer.name()).whole(70, 0).whole(62, Pens.colour(layer));
    tags.text(6, Linetypes.name(pen.dash()));
    if (tags.since2000()) {
      tags.whole(370, Pens.lineweight(pen));
    }
  }

  /** The one style, with the font that every CAD program brings. */
  private void style() {
    open(tags, "STYLE", Handles.STYLE_TABLE, 1);
    tags.record("STYLE", Handles.STYLE_TABLE).marker(RECORD).marker("AcDbTextStyleTableRecord");
    tags.text(2, STYLE).whole(70, 0).real(40, 0).real(41, 1).real(50, 0).whole(71, 0);
    tags.real(42, 2.5).text(3, "txt").text(4, "");
    close();
  }

  private void application() {
    open(tags, "APPID", Handles.APPID_TABLE, 1);
    tags.record("APPID", Handles.APPID_TABLE).marker(RECORD).marker("AcDbRegAppTableRecord");
    tags.text(2, "ACAD").whole(70, 0);
    close();
  }

  /** A dimension style's handle has a code of its own, since 5 means an arrow block there. */
  private void dimensions() {
    open(tags, "DIMSTYLE", Handles.DIMSTYLE_TABLE, tags.since2000() ? 1 : 0);
    if (tags.since2000()) {
      tags.marker("AcDbDimStyleTable").text(0, "DIMSTYLE");
      tags.handle(105, Handles.DIMENSIONS).handle(330, Handles.DIMSTYLE_TABLE);
      tags.marker(RECORD).marker("AcDbDimStyleTableRecord").text(2, STYLE).whole(70, 0);
    }
    close();
  }
}
