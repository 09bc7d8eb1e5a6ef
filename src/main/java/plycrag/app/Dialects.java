package plycrag.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.files.ngc.Dialect;
import plycrag.wall.machine.Controller;
import plycrag.wall.machine.Controller.Cycles;
import plycrag.wall.machine.Controller.DwellUnit;
import plycrag.wall.machine.Controller.ToolChange;
import plycrag.wall.machine.ProgramFrame;
import plycrag.wall.machine.ProgramFrame.ArcCentres;
import plycrag.wall.machine.ProgramFrame.Beside;

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
        controller.decimals(),
        frame(controller.frame()));
  }

  private static Dialect.Frame frame(ProgramFrame told) {
    List<List<String>> further = new ArrayList<>();
    if (told.safeStart()) {
      further.add(List.of("G40", "G49", "G80"));
    }
    switch (told.centres()) {
      case UNSAID -> {}
      case FROM_START -> further.add(List.of("G91.1"));
      case FROM_ZERO -> further.add(List.of("G90.1"));
    }
    Optional<String> beside =
        told.beside() == Beside.NOTHING ? Optional.empty() : Optional.of(told.beside().name());
    return new Dialect.Frame(
        told.percent(),
        told.number(),
        new Dialect.Opening(told.workOffset().name(), further),
        beside,
        told.centres() == ArcCentres.FROM_ZERO);
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
