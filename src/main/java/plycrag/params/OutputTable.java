package plycrag.params;

import java.util.List;
import plycrag.params.OutputParameters.DxfVersion;
import plycrag.params.OutputParameters.Paper;
import plycrag.params.OutputParameters.TemplatePaper;
import plycrag.params.OutputParameters.Templates;

/** The keys of {@code [output]}. */
final class OutputTable {
  static final Parameter<DxfVersion> DXF =
      new Parameter<>(
          "dxf",
          new WordKind<>(List.of(DxfVersion.values())),
          Standard.word(DxfVersion.R2000),
          "Version of the DXF files; r12 is older, does not state its unit, and is read"
              + " everywhere.");

  static final Parameter<Paper> PAPER =
      new Parameter<>(
          "paper",
          new WordKind<>(List.of(Paper.values())),
          Standard.word(Paper.A4, Paper.LETTER),
          "Smallest paper that drawings are printed on; a drawing that needs more takes the next"
              + " larger of its kind.");

  static final Parameter<TemplatePaper> TEMPLATE_PAPER =
      new Parameter<>(
          "template-paper",
          new WordKind<>(List.of(TemplatePaper.values())),
          Standard.word(TemplatePaper.A4, TemplatePaper.LETTER),
          "Paper of true-size templates; roll is a plotter's, 610 mm (24 in) wide.");

  static final Parameter<Templates> TEMPLATES =
      new Parameter<>(
          "templates",
          new WordKind<>(List.of(Templates.values())),
          Standard.word(Templates.AUTO),
          "What guides the drill by hand: auto draws a strip jig for sheets whose holes stand at"
              + " one pitch and a paper template for the others, sheets a paper template for all.");

  static final TableSpec TABLE =
      new TableSpec(
          "output",
          false,
          "The files that are made.",
          List.of(DXF, PAPER, TEMPLATE_PAPER, TEMPLATES),
          List.of());

  private OutputTable() {}

  static OutputParameters record(Values values) {
    return new OutputParameters(
        values.get(DXF), values.get(PAPER), values.get(TEMPLATE_PAPER), values.get(TEMPLATES));
  }
}
