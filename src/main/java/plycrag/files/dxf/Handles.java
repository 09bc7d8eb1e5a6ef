package plycrag.files.dxf;

/** Handles of what others refer to; all below those that {@link TagWriter} gives away. */
final class Handles {
  /** The owner of what nothing owns. */
  static final int NONE = 0;

  static final int VPORT_TABLE = 0x1;
  static final int LTYPE_TABLE = 0x2;
  static final int LAYER_TABLE = 0x3;
  static final int STYLE_TABLE = 0x4;
  static final int VIEW_TABLE = 0x5;
  static final int UCS_TABLE = 0x6;
  static final int APPID_TABLE = 0x7;
  static final int DIMSTYLE_TABLE = 0x8;
  static final int BLOCK_TABLE = 0x9;
  static final int DIMENSIONS = 0xA;
  static final int ROOT_DICTIONARY = 0xC;
  static final int GROUP_DICTIONARY = 0xD;
  static final int PAPER_SPACE = 0x1B;
  static final int MODEL_SPACE = 0x1F;

  private Handles() {}
}
