package plycrag.app;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Where the program starts. */
public final class Main {
  private Main() {}

  /** Runs a verb and exits with its code. */
  public static void main(String[] arguments) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    Terminal terminal = new Terminal(System.in, out, err, System.console() != null);
    System.exit(new Plycrag(terminal).run(arguments));
  }
}
