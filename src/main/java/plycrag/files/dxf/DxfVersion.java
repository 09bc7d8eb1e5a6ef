package plycrag.files.dxf;

/** The versions there are. */
public enum DxfVersion {
  /** States its units; the least that does. */
  R2000("AC1015"),
  /** For readers that take no other. It cannot state units. */
  R12("AC1009");

  private final String code;

  DxfVersion(String code) {
    this.code = code;
  }

  /** The value of $ACADVER. */
  String code() {
    return code;
  }
}
