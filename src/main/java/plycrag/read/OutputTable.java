package plycrag.read;

import java.util.List;
import java.util.stream.Stream;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.FlagKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.wall.Output;
import plycrag.wall.Output.DxfVersion;
import plycrag.wall.Output.Paper;
import plycrag.wall.Output.TemplatePaper;
import plycrag.wall.Output.Templates;

/** The keys of {@code [output]}. */
final class OutputTable {
  static final Parameter<DxfVersion> DXF =
      new Parameter<>(
          "dxf",
          new WordKind<>(List.of(DxfVersion.values())),
          DefaultValue.word(DxfVersion.R2000),
          "Version of the DXF files; r12 is older, does not state its unit, and is read"
              + " everywhere.");

  static final Parameter<Paper> PAPER =
      new Parameter<>(
          "paper",
          new WordKind<>(List.of(Paper.values())),
          DefaultValue.word(Paper.A4, Paper.LETTER),
          "Smallest paper that drawings are printed on; a drawing that needs more takes the next"
              + " larger of its kind.");

  static final Parameter<TemplatePaper> TEMPLATE_PAPER =
      new Parameter<>(
          "template-paper",
          new WordKind<>(List.of(TemplatePaper.values())),
          DefaultValue.word(TemplatePaper.A4, TemplatePaper.LETTER),
          "Paper of true-size templates; roll is a plotter's, 610 mm (24 in) wide.");

  static final Parameter<Templates> TEMPLATES =
      new Parameter<>(
          "templates",
          new WordKind<>(List.of(Templates.values())),
          DefaultValue.word(Templates.AUTO),
          "What guides the drill by hand: auto draws a strip jig for sheets whose holes stand at"
              + " one pitch, story rods for those whose rows or columns share their readings, and a"
              + " paper template only where neither serves; sheets draws a paper template for all.");

  static final Parameter<Boolean> MODEL_PAGE =
      new Parameter<>(
          "model-page",
          new FlagKind(),
          DefaultValue.flag(true),
          "Whether model.html is made, the wall in space for any browser, which takes a little over"
              + " 1 MB.");

  static final TableSpec TABLE =
      new TableSpec(
          "output",
          false,
          "The files that are made.",
          Stream.concat(
                  Stream.of(DXF, PAPER, TEMPLATE_PAPER, TEMPLATES, MODEL_PAGE),
                  LayerKeys.all().stream())
              .toList(),
          List.of());

  private OutputTable() {}

  static Output record(Values values) {
    return new Output(
        values.get(DXF),
        values.get(PAPER),
        values.get(TEMPLATE_PAPER),
        values.get(TEMPLATES),
        LayerKeys.record(values),
        values.get(MODEL_PAGE));
  }
}
