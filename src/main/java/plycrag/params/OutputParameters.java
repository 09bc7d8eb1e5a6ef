package plycrag.params;

/**
 * The files.
 *
 * @param dxf which DXF version
 * @param paper the smallest paper that drawings are printed on
 * @param templatePaper what true-size templates are printed on
 * @param templates when templates are printed
 */
public record OutputParameters(
    DxfVersion dxf, Paper paper, TemplatePaper templatePaper, Templates templates) {

  /** The DXF versions there are. */
  public enum DxfVersion {
    /** AC1015: states its units. */
    R2000,
    /** AC1009: for readers that take no other. */
    R12
  }

  /** Papers that people have a printer for. */
  public enum Paper {
    /** 210 x 297 mm. */
    A4,
    /** 297 x 420 mm. */
    A3,
    /** 8.5 x 11 in. */
    LETTER,
    /** 11 x 17 in. */
    TABLOID
  }

  /** What true-size templates are printed on. */
  public enum TemplatePaper {
    /** 210 x 297 mm, tiled. */
    A4,
    /** 297 x 420 mm, tiled. */
    A3,
    /** 8.5 x 11 in, tiled. */
    LETTER,
    /** 24 in wide, as long as need be. */
    ROLL
  }

  /** What holes are drilled by hand with. */
  public enum Templates {
    /** A strip jig where holes stand at one pitch, else paper. */
    AUTO,
    /** Paper for every sheet. */
    SHEETS
  }
}
