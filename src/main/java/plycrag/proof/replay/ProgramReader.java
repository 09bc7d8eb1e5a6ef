package plycrag.proof.replay;

import static plycrag.proof.replay.ReadingException.require;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Reads a program's text as the controller will. */
final class ProgramReader {
  /** Who stands at the machine reads so many lines (contract of programs). */
  private static final int HEAD = 10;

  private final String name;
  private final Abilities abilities;
  private final Interpreter interpreter;
  private final ProgramOpening opening = new ProgramOpening();
  private final List<String> remarks = new ArrayList<>();
  private final List<String> told = new ArrayList<>();
  private final List<Fault> faults = new ArrayList<>();

  private ProgramReader(String name, Abilities abilities) {
    this.name = name;
    this.abilities = abilities;
    this.interpreter = new Interpreter(abilities);
  }

  /**
   * Reads a program.
   *
   * @param name for faults
   */
  static ReadProgram read(String name, String text, Abilities abilities) {
    return read(name, text, abilities, Customs.NONE);
  }

  /** Reads a program and holds it against what is wanted of it. */
  static ReadProgram read(String name, String text, Abilities abilities, Customs customs) {
    ProgramReader reader = new ProgramReader(name, abilities);
    List<String> lines = List.of(text.split("\n", -1));
    int last = lines.size() - 1;
    for (int at = 0; at < last; at++) {
      reader.line(at + 1, lines.get(at), at == 0 || at == last - 1);
    }
    if (!lines.get(last).isEmpty()) {
      reader.add(last + 1, "the last line has no end");
    }
    if (!reader.interpreter.hasEnded()) {
      reader.add(last, "the program does not end");
    }
    reader.opening.faults(customs).forEach(sentence -> reader.add(1, sentence));
    return new ReadProgram(reader.interpreter.steps(), reader.remarks, reader.told, reader.faults);
  }

  private void line(int number, String text, boolean outermost) {
    try {
      if (text.equals("%")) {
        boolean understood = abilities.can(Ability.PERCENT) && outermost;
        require(understood, "a percent sign is not understood");
        opening.addPercent();
        return;
      }
      if (text.startsWith("O")) {
        require(abilities.can(Ability.NUMBERED_PROGRAMS), "a program's number is not understood");
        opening.number(text);
        return;
      }
      ProgramLine line = ProgramLine.of(text, abilities);
      if (!line.remark().isEmpty()) {
        hear(number, line.remark().toUpperCase(Locale.ROOT));
      }
      opening.add(line);
      Block block = Block.of(number, line.words(), abilities);
      if (!block.isEmpty()) {
        interpreter.obey(block);
      }
    } catch (ReadingException e) {
      add(number, e.getMessage());
    }
  }

  private void hear(int number, String remark) {
    told.add(remark);
    if (number <= HEAD) {
      remarks.add(remark);
    }
  }

  private void add(int line, String sentence) {
    faults.add(new Fault(name, line, sentence));
  }
}
