package plycrag.app;

import java.io.Console;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Where the program starts. */
public final class Main {
  private Main() {}

  /** Runs a verb and exits with its code. */
  public static void main(String[] arguments) {
    System.setProperty("java.awt.headless", "true");
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    Terminal terminal = new Terminal(System.in, out, err, isInteractive());
    System.exit(new Plycrag(terminal).run(arguments));
  }

  /** From Java 22 on there is a console even where nobody sits at it, and it can be asked. */
  @SuppressWarnings("SystemConsoleNull") // right on Java 17, and later ones are asked
  private static boolean isInteractive() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException before22) {
      return true;
    }
  }
}
