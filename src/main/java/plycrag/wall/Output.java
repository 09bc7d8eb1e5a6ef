package plycrag.wall;

/**
 * The files.
 *
 * @param dxf which DXF version
 * @param paper the smallest paper that drawings are printed on
 * @param templatePaper what true-size templates are printed on
 * @param templates when templates are printed
 * @param layers how the layers of drawings for cutting are named
 * @param modelPage whether there is a page that shows the wall in space
 */
public record Output(
    DxfVersion dxf,
    Paper paper,
    TemplatePaper templatePaper,
    Templates templates,
    LayerNames layers,
    boolean modelPage) {

  /** The DXF versions there are. */
  public enum DxfVersion {
    /** AC1015: states its units. */
    R2000,
    /** AC1009: for readers that take no other. */
    R12
  }

  /** Papers that people have a printer for. */
  public enum Paper {
    /** ISO 216. */
    A4,
    /** ISO 216. */
    A3,
    /** ASME Y14.1, size A. */
    LETTER,
    /** ASME Y14.1, size B. */
    TABLOID
  }

  /** What true-size templates are printed on. */
  public enum TemplatePaper {
    /** ISO 216, tiled. */
    A4,
    /** ISO 216, tiled. */
    A3,
    /** ASME Y14.1, size A, tiled. */
    LETTER,
    /** 24 in wide, as long as need be. */
    ROLL
  }

  /** What holes are drilled by hand with. */
  public enum Templates {
    /** A strip jig where holes stand at one pitch, rods where rows share readings, else paper. */
    AUTO,
    /** Paper for every sheet. */
    SHEETS
  }
}
