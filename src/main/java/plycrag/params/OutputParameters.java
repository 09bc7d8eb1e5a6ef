package plycrag.params;

/**
 * The files.
 *
 * @param dxf which DXF version
 */
public record OutputParameters(DxfVersion dxf) {

  /** The DXF versions there are. */
  public enum DxfVersion {
    /** AC1015: states its units. */
    R2000,
    /** AC1009: for readers that take no other. */
    R12
  }
}
