package plycrag.app;

import plycrag.files.ngc.Dialect;
import plycrag.wall.machine.Controller;
import plycrag.wall.machine.Controller.Cycles;
import plycrag.wall.machine.Controller.DwellUnit;
import plycrag.wall.machine.Controller.ToolChange;

/** From what a parameter file says of a controller to how programs are spelled for it. */
final class Dialects {
  private Dialects() {}

  static Dialect of(Controller controller) {
    return new Dialect(
        new Dialect.Words(
            controller.cycles() == Cycles.CANNED,
            controller.toolChange() == ToolChange.WORD,
            controller.changePlace().offsets(),
            controller.dwellUnit() == DwellUnit.MILLISECONDS),
        look(controller.text()),
        controller.unit(),
        controller.decimals());
  }

  private static Dialect.Look look(Controller.Text text) {
    Dialect.Comments comments =
        switch (text.comments()) {
          case PARENTHESES -> Dialect.Comments.PARENTHESES;
          case SEMICOLON -> Dialect.Comments.SEMICOLON;
          case NONE -> Dialect.Comments.NONE;
        };
    return new Dialect.Look(comments, text.lineNumbers(), text.lineLength());
  }
}
