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
  private final Abilities dialect;
  private final Interpreter controller;
  private final List<String> remarks = new ArrayList<>();
  private final List<Fault> faults = new ArrayList<>();

  private ProgramReader(String name, Abilities dialect) {
    this.name = name;
    this.dialect = dialect;
    this.controller = new Interpreter(dialect);
  }

  /**
   * Reads a program.
   *
   * @param name for faults
   */
  static ReadProgram read(String name, String text, Abilities dialect) {
    ProgramReader reader = new ProgramReader(name, dialect);
    List<String> lines = List.of(text.split("\n", -1));
    int last = lines.size() - 1;
    for (int at = 0; at < last; at++) {
      reader.line(at + 1, lines.get(at), at == 0 || at == last - 1);
    }
    if (!lines.get(last).isEmpty()) {
      reader.add(last + 1, "the last line has no end");
    }
    if (!reader.controller.hasEnded()) {
      reader.add(last, "the program does not end");
    }
    return new ReadProgram(reader.controller.steps(), reader.remarks, reader.faults);
  }

  private void line(int number, String text, boolean outermost) {
    try {
      if (text.equals("%")) {
        boolean understood = dialect.can(Ability.PERCENT) && outermost;
        require(understood, "a percent sign is not understood");
        return;
      }
      ProgramLine line = ProgramLine.of(text, dialect);
      if (number <= HEAD && !line.remark().isEmpty()) {
        remarks.add(line.remark().toUpperCase(Locale.ROOT));
      }
      Block block = Block.of(number, line.words(), dialect);
      if (!block.isEmpty()) {
        controller.obey(block);
      }
    } catch (ReadingException e) {
      add(number, e.getMessage());
    }
  }

  private void add(int line, String sentence) {
    faults.add(new Fault(name, line, sentence));
  }
}
