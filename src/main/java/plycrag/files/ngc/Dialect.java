package plycrag.files.ngc;

import java.util.List;
import java.util.Optional;
import plycrag.units.LengthUnit;

/**
 * How a controller wants programs spelled.
 *
 * @param words what its words mean
 * @param look how its lines look
 * @param unit of all lengths
 * @param decimals most digits after the point, 3 or 4
 * @param frame what stands around the moves
 */
public record Dialect(Words words, Look look, LengthUnit unit, int decimals, Frame frame) {
  /** One that says nothing around the moves but what all do. */
  public Dialect(Words words, Look look, LengthUnit unit, int decimals) {
    this(words, look, unit, decimals, Frame.PLAIN);
  }

  /** The same for a program that is so many places after the first. */
  public Dialect forProgram(int place) {
    Optional<Integer> number = frame.number().map(first -> first + place);
    return new Dialect(
        words,
        look,
        unit,
        decimals,
        new Frame(frame.percent(), number, frame.opening(), frame.beside(), frame.centresAtZero()));
  }

  /**
   * What stands around the moves.
   *
   * @param percent whether a percent sign stands first and last
   * @param number of the program, if it has one
   * @param opening how it begins
   * @param beside what is switched on with the spindle, and off by M9
   * @param centresAtZero whether centres of arcs count from zero rather than from the arc's start
   */
  public record Frame(
      boolean percent,
      Optional<Integer> number,
      Opening opening,
      Optional<String> beside,
      boolean centresAtZero) {
    static final Frame PLAIN =
        new Frame(false, Optional.empty(), new Opening("G54", List.of()), Optional.empty(), false);
  }

  /**
   * How a program begins.
   *
   * @param offset the word for the zero that it counts from
   * @param further lines of words after the modes
   */
  public record Opening(String offset, List<List<String>> further) {
    /** Copies the lines. */
    public Opening {
      further = further.stream().map(List::copyOf).toList();
    }
  }

  /**
   * What its words mean.
   *
   * @param cannedCycles whether a hole is one word rather than its moves
   * @param changesTools whether it knows a word for another tool; otherwise the program waits there
   * @param lengthOffsets whether it is told to count with the length of a tool that was changed
   * @param millisecondDwells whether waits count thousandths of a second
   */
  public record Words(
      boolean cannedCycles,
      boolean changesTools,
      boolean lengthOffsets,
      boolean millisecondDwells) {}

  /**
   * How its lines look.
   *
   * @param comments how remarks are written
   * @param numbered whether lines are numbered
   * @param longest most characters of a line, 70 at least
   */
  public record Look(Comments comments, boolean numbered, int longest) {
    /** Rejects lines that could not hold a move. */
    public Look {
      if (longest < 70) {
        throw new IllegalArgumentException("lines of " + longest + " characters hold no move");
      }
    }
  }

  /** How remarks are written. */
  public enum Comments {
    /** Between parentheses. */
    PARENTHESES,
    /** After a semicolon. */
    SEMICOLON,
    /** Not at all. */
    NONE
  }
}
