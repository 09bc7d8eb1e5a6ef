package plycrag.params;

/**
 * The files.
 *
 * @param dxf which DXF version
 * @param paper the smallest paper that drawings are printed on
 */
public record OutputParameters(DxfVersion dxf, Paper paper) {

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
}
