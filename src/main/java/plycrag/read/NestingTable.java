package plycrag.read;

import java.util.List;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.wall.Sheet;
import plycrag.wall.machine.SheetCuttingRules;
import plycrag.wall.machine.SheetCuttingRules.CutWith;
import plycrag.wall.machine.SheetCuttingRules.FaceUp;
import plycrag.wall.machine.SheetCuttingRules.Grain;

/** The keys of {@code [nesting]}. */
final class NestingTable {
  static final Parameter<CutWith> CUT_WITH =
      new Parameter<>(
          "cut-with",
          new WordKind<>(List.of(CutWith.values())),
          DefaultValue.word(CutWith.SAW),
          "What cuts the pieces from the sheets: a saw right across, or a router's bit.");
  static final Parameter<Double> KERF =
      new Parameter<>(
          "kerf",
          LengthKind.length(0, 10),
          DefaultValue.length("3 mm", "1/8 in"),
          "The width that the saw removes between two pieces.");
  static final Parameter<Double> TOOL_DIAMETER =
      new Parameter<>(
          "tool-diameter",
          LengthKind.length(1, 25),
          DefaultValue.length("6 mm", "1/4 in"),
          "The diameter of the router's bit.");
  static final Parameter<Double> TOOL_GAP =
      new Parameter<>(
          "tool-gap",
          LengthKind.length(0, 100),
          DefaultValue.length("6 mm", "1/4 in"),
          "What is left beside the bit between two pieces, so that both stay where they lie.");
  static final Parameter<Double> EDGE_TRIM =
      new Parameter<>(
          "edge-trim",
          LengthKind.length(0, 100),
          DefaultValue.length("0 mm", "0 in"),
          "What is not used along every edge of a sheet, because it is damaged or not straight, the"
              + " cut included; a piece that needs the whole sheet is laid on it all the same.");
  static final Parameter<Double> HOLD_DOWN =
      new Parameter<>(
          "hold-down",
          LengthKind.length(0, 300),
          DefaultValue.length("0 mm", "0 in"),
          "What clamps cover along every edge of a sheet that a router cuts.");
  static final Parameter<Grain> GRAIN =
      new Parameter<>(
          "grain",
          new WordKind<>(List.of(Grain.values())),
          DefaultValue.word(Grain.KEPT),
          "Whether the face grain runs on every piece as on a whole sheet of its facet, or either"
              + " way; a sheet bears more along its face grain.");
  static final Parameter<FaceUp> FACE_UP =
      new Parameter<>(
          "face-up",
          new WordKind<>(List.of(FaceUp.values())),
          DefaultValue.word(FaceUp.FRONT),
          "Which face of the sheets lies up when they are marked and drilled: the climbing side, or"
              + " the frame side, which is mirrored.");

  static final TableSpec TABLE =
      new TableSpec(
          "nesting",
          false,
          "How pieces are laid on the sheets and cut from them.",
          List.of(CUT_WITH, KERF, TOOL_DIAMETER, TOOL_GAP, EDGE_TRIM, HOLD_DOWN, GRAIN, FACE_UP),
          List.of());

  private NestingTable() {}

  static SheetCuttingRules record(Values values, Sheet sheet, List<Values> others) {
    boolean saw = values.get(CUT_WITH) == CutWith.SAW;
    double trim = values.get(EDGE_TRIM);
    return new SheetCuttingRules(
        values.get(CUT_WITH),
        saw ? values.get(KERF) : values.get(TOOL_DIAMETER) + values.get(TOOL_GAP),
        saw ? trim : Math.max(trim, values.get(HOLD_DOWN)),
        values.get(GRAIN),
        values.get(FACE_UP),
        others.stream().map(other -> StockSheetTable.record(other, sheet)).toList());
  }
}
