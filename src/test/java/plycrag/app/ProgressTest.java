package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** What somebody at a terminal sees of work that takes its time. */
class ProgressTest {
  private final StringWriter err = new StringWriter();

  private Terminal terminal(boolean isInteractive) {
    PrintWriter out = new PrintWriter(new StringWriter());
    return new Terminal(
        InputStream.nullInputStream(), out, new PrintWriter(err, true), isInteractive);
  }

  private static Supplier<Integer> taking(long milliseconds) {
    return () -> {
      try {
        Thread.sleep(milliseconds);
      } catch (InterruptedException e) {
        throw new IllegalStateException(e);
      }
      return 7;
    };
  }

  @Test
  void isToldAfterASecondAndWipedAtTheEnd() {
    Progress progress = new Progress(terminal(true));
    assertThat(progress.during("Drawing attic.toml", taking(1600), 5, () -> 3)).isEqualTo(7);
    assertThat(err.toString()).startsWith("\rDrawing attic.toml 3 of 5, 1 s");
    assertThat(err.toString()).endsWith("\r" + " ".repeat(70) + "\r");
  }

  @Test
  void isSilentWhereNobodySitsOrSilenceIsAsked() {
    assertThat(new Progress(terminal(false)).during("Drawing", taking(1300))).isEqualTo(7);
    assertThat(new Progress(terminal(true).quiet()).during("Drawing", taking(1))).isEqualTo(7);
    assertThat(err.toString()).isEmpty();
  }
}
