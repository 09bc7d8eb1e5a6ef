package plycrag.app;

import plycrag.files.ngc.Dialect;
import plycrag.params.ControllerParameters;
import plycrag.params.ControllerParameters.Cycles;
import plycrag.params.ControllerParameters.DwellUnit;
import plycrag.params.ControllerParameters.ToolChange;

/** From what a parameter file says of a controller to how programs are spelled for it. */
final class Dialects {
  private Dialects() {}

  static Dialect of(ControllerParameters controller) {
    return new Dialect(
        new Dialect.Words(
            controller.cycles() == Cycles.CANNED,
            controller.toolChange() == ToolChange.WORD,
            controller.dwellUnit() == DwellUnit.MILLISECONDS),
        look(controller.text()),
        controller.unit(),
        controller.decimals());
  }

  private static Dialect.Look look(ControllerParameters.Text text) {
    Dialect.Comments comments =
        switch (text.comments()) {
          case PARENTHESES -> Dialect.Comments.PARENTHESES;
          case SEMICOLON -> Dialect.Comments.SEMICOLON;
          case NONE -> Dialect.Comments.NONE;
        };
    return new Dialect.Look(comments, text.lineNumbers(), text.lineLength());
  }
}
