package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import plycrag.app.shell.CompletedVerb;

/** Every shell learns every verb and option; whether it takes them is tried with the shells. */
class CompletionTest {
  private final StringWriter out = new StringWriter();

  private String script(String shell) {
    PrintWriter err = new PrintWriter(new StringWriter());
    assertThat(new Plycrag(new PrintWriter(out), err).run("completion", shell)).isZero();
    return out.toString();
  }

  private static CommandLine line() {
    PrintWriter none = new PrintWriter(new StringWriter());
    return new Plycrag(none, none).line();
  }

  @ParameterizedTest
  @ValueSource(strings = {"bash", "zsh", "fish"})
  void knowsEveryVerbAndOption(String shell) {
    String script = script(shell);
    assertThat(script).doesNotContain("\r", "${COMPLETION", "${DEFAULT", "%n");
    for (CompletedVerb verb : CompletedVerb.of(line())) {
      assertThat(script).contains(verb.name());
      for (CompletedVerb.Flag option : verb.options()) {
        String longest = option.names().get(option.names().size() - 1);
        assertThat(script).contains(longest.substring(longest.startsWith("--") ? 2 : 1));
      }
    }
  }

  @Test
  void tellsFilesFromWordsAndOtherValues() {
    List<CompletedVerb> verbs = CompletedVerb.of(line());
    assertThat(verbs)
        .filteredOn(verb -> verb.name().equals("build"))
        .singleElement()
        .satisfies(verb -> assertThat(verb.takesFiles()).isTrue())
        .satisfies(
            verb ->
                assertThat(verb.options())
                    .filteredOn(option -> option.names().contains("--out"))
                    .singleElement()
                    .satisfies(out -> assertThat(out.takesFile()).isTrue()));
    assertThat(verbs)
        .filteredOn(verb -> verb.name().equals("completion"))
        .singleElement()
        .satisfies(verb -> assertThat(verb.words()).containsExactly("bash", "zsh", "fish"));
    assertThat(verbs)
        .filteredOn(verb -> verb.name().equals("help"))
        .singleElement()
        .satisfies(verb -> assertThat(verb.words()).contains("build", "new"));
  }

  @Test
  void quotesWhatAShellWouldRun() {
    assertThat(script("fish")).contains("Prints the program\\'s version");
    out.getBuffer().setLength(0);
    assertThat(script("zsh")).contains("Prints the program'\\''s version");
  }
}
