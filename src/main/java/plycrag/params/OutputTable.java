package plycrag.params;

import java.util.List;
import plycrag.params.OutputParameters.DxfVersion;
import plycrag.params.OutputParameters.Paper;

/** The keys of {@code [output]}. */
final class OutputTable {
  static final Parameter<DxfVersion> DXF =
      new Parameter<>(
          "dxf",
          new WordKind<>(List.of(DxfVersion.values())),
          Standard.word(DxfVersion.R2000),
          "Version of the DXF files; r12 is older, does not state its unit, and is read everywhere.");

  static final Parameter<Paper> PAPER =
      new Parameter<>(
          "paper",
          new WordKind<>(List.of(Paper.values()), List.of()),
          Standard.word(Paper.A4, Paper.LETTER),
          "Smallest paper that drawings are printed on; a drawing that needs more takes the next"
              + " larger of its kind.");

  static final TableSpec TABLE =
      new TableSpec("output", false, "The files that are made.", List.of(DXF, PAPER), List.of());

  private OutputTable() {}

  static OutputParameters record(Values values) {
    return new OutputParameters(values.get(DXF), values.get(PAPER));
  }
}
