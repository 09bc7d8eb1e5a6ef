package plycrag.proof.replay;

/**
 * What is wrong with a program.
 *
 * @param where the program's name, or what all programs of a face together lack
 * @param line counted from 1; 0 if it is no single line's
 * @param sentence without a full stop, for the person who looks into it
 */
public record Fault(String where, int line, String sentence) {

  /** All of it on one line. */
  public String text() {
    return line == 0 ? where + ": " + sentence : where + ", line " + line + ": " + sentence;
  }
}
