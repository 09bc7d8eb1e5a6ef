package plycrag.app;

import java.io.PrintWriter;

/** What went wrong in the program itself, told as such. */
final class Defect {
  private Defect() {}

  /**
   * Tells it with its trace; the exit code.
   *
   * @param where it was met: the program, or a file of the user's
   */
  static int tell(String where, Throwable cause, PrintWriter err) {
    err.println(where + ": a defect of the program, not of your file. Nothing was written.");
    cause.printStackTrace(err);
    return Exit.DEFECT;
  }
}
