package plycrag.app;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.Writer;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Where a run reads and writes.
 *
 * @param in what {@code -} reads, and the answers of a person
 * @param out results
 * @param err findings, usage and progress
 * @param isInteractive whether a person sits there who can be asked and wants to see progress
 */
record Terminal(InputStream in, PrintWriter out, PrintWriter err, boolean isInteractive) {

  /** The same without results and progress. */
  Terminal quiet() {
    return new Terminal(in, new PrintWriter(Writer.nullWriter()), err, false);
  }

  /** The program, of which verbs know no more. */
  interface Held {
    /** Where it reads and writes. */
    Terminal terminal();
  }

  /** That of the program to which a verb belongs. */
  static Terminal of(CommandSpec verb) {
    return ((Held) verb.root().userObject()).terminal();
  }

  /** One at which nobody sits. */
  static Terminal unattended(PrintWriter out, PrintWriter err) {
    return new Terminal(InputStream.nullInputStream(), out, err, false);
  }
}
