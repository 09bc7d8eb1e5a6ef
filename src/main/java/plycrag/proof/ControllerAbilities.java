package plycrag.proof;

import java.util.EnumSet;
import java.util.Set;
import plycrag.proof.replay.Abilities;
import plycrag.proof.replay.Ability;
import plycrag.units.LengthUnit;
import plycrag.wall.machine.Controller;
import plycrag.wall.machine.Controller.Comments;
import plycrag.wall.machine.Controller.Cycles;
import plycrag.wall.machine.Controller.DwellUnit;
import plycrag.wall.machine.Controller.ToolChange;
import plycrag.wall.machine.ProgramFrame;
import plycrag.wall.machine.ProgramFrame.ArcCentres;
import plycrag.wall.machine.ProgramFrame.Beside;
import plycrag.wall.machine.ProgramFrame.WorkOffset;

/** What a controller understands, in the words of the self-check. */
final class ControllerAbilities {
  private ControllerAbilities() {}

  static Abilities by(Controller controller) {
    Set<Ability> abilities = EnumSet.noneOf(Ability.class);
    add(abilities, controller.text().comments() == Comments.PARENTHESES, Ability.PARENTHESES);
    add(abilities, controller.text().comments() == Comments.SEMICOLON, Ability.SEMICOLON);
    add(abilities, controller.text().lineNumbers(), Ability.LINE_NUMBERS);
    add(abilities, controller.unit() == LengthUnit.IN, Ability.INCHES);
    add(abilities, controller.arcs(), Ability.ARCS);
    add(abilities, controller.cycles() == Cycles.CANNED, Ability.CYCLES);
    add(abilities, controller.toolChange() == ToolChange.WORD, Ability.TOOL_CHANGE);
    boolean changes = controller.toolChange() != ToolChange.PROGRAM;
    add(abilities, changes && controller.changePlace().offsets(), Ability.LENGTH_OFFSETS);
    add(abilities, controller.toolChange() == ToolChange.PAUSE, Ability.PAUSE);
    ProgramFrame frame = controller.frame();
    add(abilities, frame.percent(), Ability.PERCENT);
    add(abilities, frame.number().isPresent(), Ability.NUMBERED_PROGRAMS);
    add(abilities, frame.safeStart(), Ability.CANCELLING);
    add(abilities, frame.workOffset() != WorkOffset.G54, Ability.OFFSETS);
    add(abilities, frame.centres() == ArcCentres.FROM_ZERO, Ability.CENTRES_FROM_ZERO);
    add(abilities, frame.centres() == ArcCentres.FROM_START, Ability.CENTRES_FROM_START);
    add(abilities, frame.beside() == Beside.M7, Ability.MIST);
    add(abilities, frame.beside() == Beside.M8, Ability.FLOOD);
    boolean milliseconds = controller.dwellUnit() == DwellUnit.MILLISECONDS;
    return new Abilities(abilities, milliseconds, controller.text().lineLength());
  }

  private static void add(Set<Ability> abilities, boolean has, Ability ability) {
    if (has) {
      abilities.add(ability);
    }
  }
}
