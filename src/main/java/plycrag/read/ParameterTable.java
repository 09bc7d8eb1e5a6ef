package plycrag.read;

import java.util.List;
import java.util.Optional;
import plycrag.read.schema.TableSpec;

/** All tables of a parameter file with all their keys, each declared once. */
final class ParameterTable {
  static final List<TableSpec> TABLES =
      List.of(
          WallTable.TABLE,
          FacetTable.TABLE,
          CutoutTable.TABLE,
          SheetTable.TABLE,
          StockSheetTable.TABLE,
          NestingTable.TABLE,
          FrameTable.TABLE,
          JointTable.TABLE,
          StockTable.TABLE,
          InsertTable.TABLE,
          ZoneTable.TABLE,
          ScrewTable.TABLE,
          ClearanceTable.TABLE,
          SupportTable.TABLE,
          StructureTable.TABLE,
          RoomTable.TABLE,
          RoomTable.OBSTACLES,
          RoomTable.MAT,
          RoomTable.HANDLING,
          MachineTable.TABLE,
          ToolTable.TABLE,
          KeepOutTable.TABLE,
          OutputTable.TABLE);

  private ParameterTable() {}

  /** The names of all tables. */
  static List<String> names() {
    return TABLES.stream().map(TableSpec::name).toList();
  }

  /** The table of that name. */
  static Optional<TableSpec> find(String name) {
    return TABLES.stream().filter(table -> table.name().equals(name)).findFirst();
  }
}
