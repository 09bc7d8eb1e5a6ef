package plycrag.files.ngc;

import java.util.ArrayList;
import java.util.List;
import plycrag.document.Move;
import plycrag.document.Xy;
import plycrag.document.Xyz;
import plycrag.units.Decimal;

/**
 * Spells moves, one line each.
 *
 * <p>Of a cut only the words for what changes are written, as of a series of canned cycles only the
 * places; arcs are told with their centre, counted from where they begin.
 */
final class MoveWords {
  private static final double MILLISECONDS = 1000;

  private final Dialect dialect;
  private final Lines lines;
  private Xyz at = new Xyz(0, 0, 0);
  private Move.DrillCycle open;

  MoveWords(Dialect dialect, Lines lines) {
    this.dialect = dialect;
    this.lines = lines;
  }

  void write(Move move) {
    if (move instanceof Move.DrillCycle cycle) {
      hole(cycle);
      return;
    }
    closeCycle();
    if (move instanceof Move.ToolChange change) {
      change(change);
    } else if (move instanceof Move.SpindleOff) {
      dialect.frame().beside().ifPresent(running -> lines.code(List.of("M9")));
      lines.code(List.of("M5"));
    } else if (move instanceof Move.SpindleOn on) {
      lines.code(List.of("M3", "S" + positive(Decimal.of(on.speed(), 3))));
      dialect.frame().beside().ifPresent(beside -> lines.code(List.of(beside)));
    } else {
      lines.code(words(move));
    }
  }

  /** Leaves the canned cycles, if the program is among them. */
  void closeCycle() {
    if (open != null) {
      lines.code(List.of("G80"));
      open = null;
    }
  }

  private void hole(Move.DrillCycle cycle) {
    if (!dialect.words().cannedCycles()) {
      cycle.steps(at.z()).forEach(this::write);
      return;
    }
    boolean continues = open != null && sameBut(open, cycle);
    if (!continues) {
      closeCycle();
    }
    lines.code(continues ? place(cycle.place()) : cycleWords(cycle));
    open = cycle;
    at = new Xyz(cycle.place().x(), cycle.place().y(), cycle.retract());
  }

  private static boolean sameBut(Move.DrillCycle one, Move.DrillCycle other) {
    return other.equals(
        new Move.DrillCycle(other.place(), one.retract(), one.bottom(), one.peck(), one.feed()));
  }

  private List<String> cycleWords(Move.DrillCycle cycle) {
    List<String> words = new ArrayList<>();
    words.add("G99");
    words.add(cycle.peck() > 0 ? "G83" : "G81");
    words.addAll(place(cycle.place()));
    words.add("Z" + length(cycle.bottom()));
    words.add("R" + length(cycle.retract()));
    if (cycle.peck() > 0) {
      words.add("Q" + length(cycle.peck()));
    }
    words.add(feed(cycle.feed()));
    return words;
  }

  private void change(Move.ToolChange change) {
    lines.remark(change.tool());
    lines.code(
        dialect.words().changesTools() ? List.of("T" + change.number(), "M6") : List.of("M0"));
    if (dialect.words().lengthOffsets()) {
      lines.code(List.of("G43", "H" + change.number()));
    }
  }

  private List<String> words(Move move) {
    if (move instanceof Move.RapidZ rapid) {
      at = at.at(rapid.z());
      return List.of("G0", "Z" + length(rapid.z()));
    }
    if (move instanceof Move.RapidXy rapid) {
      at = new Xyz(rapid.x(), rapid.y(), at.z());
      return List.of("G0", "X" + length(rapid.x()), "Y" + length(rapid.y()));
    }
    if (move instanceof Move.Plunge plunge) {
      at = at.at(plunge.z());
      return List.of("G1", "Z" + length(plunge.z()), feed(plunge.feed()));
    }
    return move instanceof Move.Dwell dwell ? wait(dwell) : cut(move);
  }

  private List<String> cut(Move move) {
    List<String> words = new ArrayList<>();
    Xyz from = at;
    if (move instanceof Move.Arc arc) {
      words.add(arc.clockwise() ? "G2" : "G3");
      words.addAll(end(arc.to()));
      Xyz zero = dialect.frame().centresAtZero() ? new Xyz(0, 0, 0) : from;
      words.add("I" + length(arc.centre().x() - zero.x()));
      words.add("J" + length(arc.centre().y() - zero.y()));
      words.add(feed(arc.feed()));
    } else if (move instanceof Move.Cut cut) {
      words.add("G1");
      words.addAll(end(cut.to()));
      words.add(feed(cut.feed()));
    }
    return words;
  }

  private List<String> end(Xyz to) {
    List<String> words = new ArrayList<>(place(to.flat()));
    if (!length(to.z()).equals(length(at.z()))) {
      words.add("Z" + length(to.z()));
    }
    at = to;
    return words;
  }

  private List<String> wait(Move.Dwell dwell) {
    double counted = dialect.words().millisecondDwells() ? MILLISECONDS : 1;
    return List.of("G4", "P" + Decimal.of(dwell.seconds() * counted, 3));
  }

  private List<String> place(Xy place) {
    return List.of("X" + length(place.x()), "Y" + length(place.y()));
  }

  private String feed(double feed) {
    return "F" + positive(length(feed));
  }

  /** With a point even where it is whole: some controllers read X133 as 0.133. */
  private String length(double length) {
    String number = Decimal.of(length / dialect.unit().millimetres(), dialect.decimals());
    return number.contains(".") ? number : number + ".";
  }

  private static String positive(String number) {
    if (number.startsWith("-") || number.equals("0.") || number.equals("0")) {
      throw new IllegalStateException("unsafe program: a feed or speed of " + number);
    }
    return number;
  }
}
