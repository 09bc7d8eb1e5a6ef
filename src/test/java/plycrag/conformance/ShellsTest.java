package plycrag.conformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plycrag.app.Plycrag;

/** The shells themselves complete by what the program prints for them. */
@Tag("conformance")
class ShellsTest {
  @TempDir private Path scratch;

  private String script(String shell) {
    StringWriter text = new StringWriter();
    PrintWriter none = new PrintWriter(new StringWriter());
    assertThat(new Plycrag(new PrintWriter(text), none).run("completion", shell)).isZero();
    return Tools.write(scratch.resolve("_plycrag"), text.toString()).toString();
  }

  @Test
  void bashCompletesVerbsOptionsAndWords() {
    String ready = "source " + script("bash") + "; compopt() { :; };";
    String source = ready + " COMP_CWORD=%d; COMP_WORDS=(plycrag %s);";
    String told = " _complete_plycrag; echo ${COMPREPLY[@]}";
    assertThat(Tools.output("bash", "-c", source.formatted(1, "b") + told)).isEqualTo("build\n");
    assertThat(Tools.output("bash", "-c", source.formatted(2, "build --ou") + told))
        .isEqualTo("--out\n");
    assertThat(Tools.output("bash", "-c", source.formatted(2, "completion z") + told))
        .isEqualTo("zsh\n");
  }

  @Test
  void fishCompletesVerbsOptionsAndWords() {
    String source = "source " + script("fish") + "; complete -C ";
    assertThat(Tools.output("fish", "-c", source + "'plycrag b'"))
        .startsWith("build\tMakes a folder of drawings");
    assertThat(Tools.output("fish", "-c", source + "'plycrag build --ou'")).startsWith("--out");
    assertThat(Tools.output("fish", "-c", source + "'plycrag new --like c'").lines())
        .hasSize(2)
        .allMatch(line -> line.startsWith("cave") || line.startsWith("corner"));
  }

  /** What it would offer can be asked for at a terminal alone: here it takes the function. */
  @Test
  void zshTakesTheFunction() {
    String script = script("zsh");
    assertThat(Tools.output("zsh", "-n", script)).isEmpty();
    String load = "autoload -Uz compinit; compinit -D -u; source " + script + ";";
    assertThat(Tools.output("zsh", "-f", "-c", load + " print $_comps[plycrag]"))
        .isEqualTo("_plycrag\n");
  }
}
