package plycrag.files.dxf;

/** Model space and paper space, and the dictionaries, which R12 does without. */
final class Spaces {
  private static final String MODEL = "*MODEL_SPACE";
  private static final String PAPER = "*PAPER_SPACE";

  private Spaces() {}

  /** The block records' table. */
  static void records(TagWriter tags) {
    if (tags.since2000()) {
      Tables.open(tags, "BLOCK_RECORD", Handles.BLOCK_TABLE, 2);
      record(tags, MODEL, Handles.MODEL_SPACE);
      record(tags, PAPER, Handles.PAPER_SPACE);
      tags.text(0, "ENDTAB");
    }
  }

  private static void record(TagWriter tags, String name, int handle) {
    tags.record("BLOCK_RECORD", handle, Handles.BLOCK_TABLE);
    tags.marker("AcDbSymbolTableRecord").marker("AcDbBlockTableRecord").text(2, name);
  }

  /** The blocks' section. */
  static void blocks(TagWriter tags) {
    tags.section("BLOCKS");
    if (tags.since2000()) {
      block(tags, MODEL, Handles.MODEL_SPACE);
      block(tags, PAPER, Handles.PAPER_SPACE);
    }
    tags.endSection();
  }

  private static void block(TagWriter tags, String name, int owner) {
    tags.record("BLOCK", owner).marker("AcDbEntity").text(8, Tables.LAYER_0);
    tags.marker("AcDbBlockBegin").text(2, name).whole(70, 0);
    tags.real(10, 0).real(20, 0).real(30, 0).text(3, name).text(1, "");
    tags.record("ENDBLK", owner).marker("AcDbEntity").text(8, Tables.LAYER_0);
    tags.marker("AcDbBlockEnd");
  }

  /** The objects' section. */
  static void objects(TagWriter tags) {
    if (tags.since2000()) {
      tags.section("OBJECTS");
      dictionary(tags, Handles.ROOT_DICTIONARY, Handles.NONE);
      tags.text(3, "ACAD_GROUP").handle(350, Handles.GROUP_DICTIONARY);
      dictionary(tags, Handles.GROUP_DICTIONARY, Handles.ROOT_DICTIONARY);
      tags.endSection();
    }
  }

  private static void dictionary(TagWriter tags, int handle, int owner) {
    tags.record("DICTIONARY", handle, owner).marker("AcDbDictionary").whole(281, 1);
  }
}
