package plycrag.app;

import java.util.EnumSet;
import java.util.Set;
import plycrag.machining.replay.Ability;
import plycrag.machining.replay.Dialect;
import plycrag.params.ControllerParameters;
import plycrag.params.ControllerParameters.Comments;
import plycrag.params.ControllerParameters.Cycles;
import plycrag.params.ControllerParameters.DwellUnit;
import plycrag.params.ControllerParameters.ToolChange;
import plycrag.units.LengthUnit;

/** What a controller understands, in the words of the self-check. */
final class Understood {
  private Understood() {}

  static Dialect by(ControllerParameters controller) {
    Set<Ability> abilities = EnumSet.noneOf(Ability.class);
    add(abilities, controller.text().comments() == Comments.PARENTHESES, Ability.PARENTHESES);
    add(abilities, controller.text().comments() == Comments.SEMICOLON, Ability.SEMICOLON);
    add(abilities, controller.text().lineNumbers(), Ability.LINE_NUMBERS);
    add(abilities, controller.unit() == LengthUnit.IN, Ability.INCHES);
    add(abilities, controller.arcs(), Ability.ARCS);
    add(abilities, controller.cycles() == Cycles.CANNED, Ability.CYCLES);
    add(abilities, controller.toolChange() == ToolChange.WORD, Ability.TOOL_CHANGE);
    add(abilities, controller.toolChange() == ToolChange.PAUSE, Ability.PAUSE);
    boolean milliseconds = controller.dwellUnit() == DwellUnit.MILLISECONDS;
    return new Dialect(abilities, milliseconds, controller.text().lineLength());
  }

  private static void add(Set<Ability> abilities, boolean has, Ability ability) {
    if (has) {
      abilities.add(ability);
    }
  }
}
