package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What somebody at a terminal sees of work that takes its time. */
class ProgressTest {
  private final StringWriter err = new StringWriter();

  private Terminal terminal(boolean isInteractive) {
    PrintWriter out = new PrintWriter(new StringWriter());
    return new Terminal(
        InputStream.nullInputStream(), out, new PrintWriter(err, true), isInteractive);
  }

  /** Work that is over once something was told of it, however fast the machine is. */
  private int untilTold() {
    while (err.toString().isEmpty()) {
      Thread.onSpinWait();
    }
    return 7;
  }

  @Test
  @Timeout(60)
  void isToldAfterASecondAndWipedAtTheEnd() {
    Progress progress = new Progress(terminal(true));
    assertThat(progress.during("Drawing attic.toml", this::untilTold, 5, () -> 3)).isEqualTo(7);
    assertThat(err.toString()).containsPattern("^\\rDrawing attic\\.toml 3 of 5, [1-9][0-9]* s");
    assertThat(err.toString()).endsWith("\r" + " ".repeat(70) + "\r");
  }

  @Test
  void isSilentWhereNobodySitsOrSilenceIsAsked() {
    assertThat(new Progress(terminal(false)).during("Drawing", () -> 7)).isEqualTo(7);
    assertThat(new Progress(terminal(true).quiet()).during("Drawing", () -> 7)).isEqualTo(7);
    assertThat(err.toString()).isEmpty();
  }
}
