package plycrag.params;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a file says in all of its tables.
 *
 * @param facets in the file's order
 * @param single the tables that stand once, by name
 */
record Contents(List<Values> facets, Map<String, Values> single) {
  /** Copies both. */
  Contents {
    facets = List.copyOf(facets);
    single = Map.copyOf(single);
  }

  /** Reads every table. */
  static Contents read(DocumentReader reader) {
    Map<String, Values> single = new HashMap<>();
    for (TableSpec table : ParameterTable.TABLES) {
      if (!table.isList()) {
        single.put(table.name(), reader.read(table));
      }
    }
    return new Contents(reader.readAll(FacetTable.TABLE), single);
  }

  /** Reports values that do not go together. */
  void check(Faults faults) {
    for (TableSpec table : ParameterTable.TABLES) {
      if (!table.isList()) {
        table.relations().forEach(relation -> relation.check(in(table), faults));
      }
    }
    InsertTable.checkLines(in(InsertTable.TABLE), faults);
  }

  /**
   * The records.
   *
   * @param stem the wall's name where the file does not give one
   */
  Parameters parameters(String stem) {
    double wallWidth = in(WallTable.TABLE).get(WallTable.WIDTH);
    ScrewParameters screws = ScrewTable.record(in(ScrewTable.TABLE));
    return new Parameters(
        WallTable.record(in(WallTable.TABLE), stem),
        facets.stream().map(facet -> FacetTable.record(facet, wallWidth)).toList(),
        SheetTable.record(in(SheetTable.TABLE)),
        FrameTable.record(in(FrameTable.TABLE)),
        StockTable.record(in(StockTable.TABLE)),
        InsertTable.record(in(InsertTable.TABLE)),
        screws,
        ClearanceTable.record(in(ClearanceTable.TABLE), screws),
        MachineTable.record(in(MachineTable.TABLE)),
        OutputTable.record(in(OutputTable.TABLE)));
  }

  /** What the file says in a table that stands once. */
  Values in(TableSpec table) {
    return single.get(table.name());
  }
}
