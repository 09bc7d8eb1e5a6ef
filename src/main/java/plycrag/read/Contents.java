package plycrag.read;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plycrag.read.Parameters.GivenFace;
import plycrag.read.Parameters.Making;
import plycrag.read.Parameters.Site;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.Values;
import plycrag.read.text.Context;
import plycrag.read.text.Faults;
import plycrag.wall.Clearances;
import plycrag.wall.Frame;
import plycrag.wall.Inserts;
import plycrag.wall.ScrewReach;
import plycrag.wall.Screws;
import plycrag.wall.Sheet;
import plycrag.wall.Wall.Framework;
import plycrag.wall.Wall.Sheeting;
import plycrag.wall.buying.MaterialWishes;
import plycrag.wall.machine.Machine;
import plycrag.wall.room.Supports;

/** What a file says in all of its tables. */
final class Contents {
  private final Map<String, List<Values>> tables;

  /**
   * Copies the tables.
   *
   * @param tables by the table's name, in the file's order; one for a table that stands once
   */
  Contents(Map<String, List<Values>> tables) {
    this.tables = Map.copyOf(tables);
  }

  /** Reads every table. */
  static Contents read(DocumentReader reader) {
    Map<String, List<Values>> tables = new HashMap<>();
    for (TableSpec table : ParameterTable.TABLES) {
      tables.put(
          table.name(), table.isList() ? reader.readAll(table) : List.of(reader.read(table)));
    }
    tables.computeIfPresent(
        SheetTable.TABLE.name(), (name, all) -> all.stream().map(SheetTable::sized).toList());
    return new Contents(tables);
  }

  /** Reports values that do not go together. */
  void check(Context context) {
    FacetTable.checkNames(tables.get(FacetTable.TABLE.name()), context.faults());
    FacetTable.checkFolds(tables.get(FacetTable.TABLE.name()), context.faults());
    new FacetChecks(tables.get(FacetTable.TABLE.name()), context.faults()).run();
    CutoutTable.check(tables.get(CutoutTable.TABLE.name()), facetNames(), context.faults());
    SupportChecks.check(in(SupportTable.TABLE), all(FacetTable.TABLE), context.faults());
    CeilingKeys.check(in(RoomTable.TABLE), context.faults());
    SheetTable.check(in(SheetTable.TABLE), context.faults());
    StockSheetTable.check(tables.get(StockSheetTable.TABLE.name()), context.faults());
    InsertTable.check(in(InsertTable.TABLE), context.faults());
    ZoneTable.check(tables.get(ZoneTable.TABLE.name()), facetNames(), context.faults());
    ToolTable.check(tables.get(ToolTable.TABLE.name()), context.faults());
    KeepOutTable.check(tables.get(KeepOutTable.TABLE.name()), context.faults());
    ControllerKeys.check(in(MachineTable.TABLE), context.faults());
    if (context.unit().isPresent()) {
      RecessKeys.checkDepth(in(InsertTable.TABLE), in(SheetTable.TABLE), context.faults());
      StockTable.checkCarrying(in(StockTable.TABLE), context.faults());
      SupportChecks.checkLedgers(
          in(SupportTable.TABLE), all(FacetTable.TABLE), in(FrameTable.TABLE), context.faults());
      ParameterTable.TABLES.forEach(table -> checkRelations(table, context.faults()));
    }
    if (context.faults().sorted().isEmpty()) {
      new FacetChecks(tables.get(FacetTable.TABLE.name()), context.faults())
          .checkLosses(
              in(WallTable.TABLE).get(WallTable.WIDTH), in(WallTable.TABLE).get(WallTable.RAISE));
    }
  }

  /**
   * The records.
   *
   * @param stem the wall's name where the file does not give one
   */
  Parameters parameters(String stem) {
    double wallWidth = in(WallTable.TABLE).get(WallTable.WIDTH);
    MaterialWishes buying = StockTable.buying(in(StockTable.TABLE));
    Sheet sheet = SheetTable.record(in(SheetTable.TABLE), buying.environment());
    Frame frame = FrameTable.record(in(FrameTable.TABLE));
    Screws screws = ScrewTable.record(in(ScrewTable.TABLE));
    Clearances clearance = ClearanceTable.record(in(ClearanceTable.TABLE), screws);
    ScrewReach reach = ScrewReach.throughSheet(sheet.thickness(), frame, clearance);
    return new Parameters(
        WallTable.record(in(WallTable.TABLE), stem),
        face(wallWidth, sheet),
        new Sheeting(sheet, ScrewTable.reaching(in(ScrewTable.TABLE), screws, reach), clearance),
        new Framework(
            frame,
            JointTable.record(in(JointTable.TABLE), frame.breadth()),
            StockTable.record(in(StockTable.TABLE))),
        new Making(
            NestingTable.record(
                in(NestingTable.TABLE), sheet, tables.get(StockSheetTable.TABLE.name())),
            machine(screws),
            buying,
            OutputTable.record(in(OutputTable.TABLE))),
        new Site(
            supports(frame),
            RoomTable.record(this),
            StructureTable.record(in(StructureTable.TABLE), buying)));
  }

  private Supports supports(Frame frame) {
    return SupportTable.record(in(SupportTable.TABLE), all(FacetTable.TABLE), facetNames(), frame);
  }

  private GivenFace face(double wallWidth, Sheet sheet) {
    Inserts inserts = InsertTable.record(in(InsertTable.TABLE));
    return new GivenFace(
        FacetTable.records(tables.get(FacetTable.TABLE.name()), wallWidth),
        CutoutTable.records(tables.get(CutoutTable.TABLE.name()), facetNames()),
        inserts,
        ZoneTable.records(
            tables.get(ZoneTable.TABLE.name()),
            facetNames(),
            inserts.pattern(),
            sheet.length() * sheet.width()));
  }

  private Machine machine(Screws screws) {
    return MachineTable.record(
        in(MachineTable.TABLE),
        screws,
        ToolTable.records(tables.get(ToolTable.TABLE.name()), in(MachineTable.TABLE)),
        KeepOutTable.records(tables.get(KeepOutTable.TABLE.name())));
  }

  private List<String> facetNames() {
    return FacetTable.names(tables.get(FacetTable.TABLE.name()));
  }

  /** What the file says in a table that stands once. */
  Values in(TableSpec table) {
    return tables.get(table.name()).get(0);
  }

  /** What the file says in a table that may stand several times, in its order. */
  List<Values> all(TableSpec table) {
    return tables.get(table.name());
  }

  private void checkRelations(TableSpec table, Faults faults) {
    for (Values values : tables.get(table.name())) {
      table.relations().forEach(relation -> relation.check(values, faults));
    }
  }
}
