package plycrag.files.dxf;

import java.util.List;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Shape;
import plycrag.document.Xy;

/** Writes drawings as DXF. */
public final class DxfWriter {
  private static final int MILLIMETRES = 4;
  private static final int METRIC = 1;

  /** DXF reference, "Group codes in numerical order": a remark that readers pass over. */
  private static final int REMARK = 999;

  private DxfWriter() {}

  /**
   * The text of a file, ASCII; areas without an edge are left out.
   *
   * @throws IllegalArgumentException if two layers of one name have different pens; a defect of the
   *     caller
   */
  public static String write(Drawing drawing, DxfVersion version) {
    TagWriter body = new TagWriter(version);
    new Tables(body, drawing).write();
    Spaces.blocks(body);
    entities(body, drawing);
    Spaces.objects(body);
    body.text(0, "EOF");
    return remarks(drawing, version) + header(drawing.extent(), version, body.freeHandle()) + body;
  }

  private static String remarks(Drawing drawing, DxfVersion version) {
    TagWriter tags = new TagWriter(version);
    drawing.remarks().forEach(remark -> tags.text(REMARK, DxfText.of(remark)));
    return tags.toString();
  }

  /** Stands first but is written last, since it names the first handle that nothing has. */
  private static String header(Extent extent, DxfVersion version, int freeHandle) {
    TagWriter tags = new TagWriter(version).section("HEADER");
    tags.text(9, "$ACADVER").text(1, version.code());
    tags.text(9, "$DWGCODEPAGE").text(3, "ANSI_1252");
    Xy low = new Xy(extent.left(), extent.low());
    Xy high = new Xy(extent.right(), extent.high());
    tags.text(9, "$INSBASE").place(10, new Xy(0, 0));
    tags.text(9, "$EXTMIN").place(10, low).text(9, "$EXTMAX").place(10, high);
    tags.text(9, "$LIMMIN").flat(10, low).text(9, "$LIMMAX").flat(10, high);
    if (tags.since2000()) {
      tags.text(9, "$HANDSEED").handle(5, freeHandle);
      tags.text(9, "$INSUNITS").whole(70, MILLIMETRES);
      tags.text(9, "$MEASUREMENT").whole(70, METRIC);
      tags.endSection().section("CLASSES");
    }
    return tags.endSection().toString();
  }

  private static void entities(TagWriter tags, Drawing drawing) {
    tags.section("ENTITIES");
    Entities entities = new Entities(tags, drawing.scale());
    List<Shape> edged =
        drawing.shapes().stream().filter(shape -> !(shape instanceof Shape.Area)).toList();
    Coincidence.withoutRepeats(edged).forEach(entities::write);
    tags.endSection();
  }
}
