package plycrag.conformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.TestFiles;

/** Pages by the rules of axe-core, which follow the Web Content Accessibility Guidelines. */
@Tag("conformance")
class AccessibilityTest {
  private static final String RULES =
      TestFiles.read(Path.of("target/npm/node_modules/axe-core/axe.min.js"));

  @TempDir private static Path folder;

  private static Browser browser;

  @BeforeAll
  static void start() {
    browser = new Browser(folder.resolve("profile"));
  }

  @AfterAll
  static void stop() {
    browser.close();
  }

  /** With a support and a page in space; with prices; a corner; in inches. */
  private static final List<String> READ =
      List.of("boat-bay", "river-bay", "skiff-corner", "oar-loft");

  /** Every page of some samples: the rules read each of thousands of lines of a drawing. */
  static Stream<Path> pages() {
    return READ.stream()
        .map(sample -> Path.of("out-samples", sample))
        .flatMap(sample -> TestFiles.list(sample, ".html").stream());
  }

  /** What breaks a rule, with the first place where it does. */
  private static List<?> broken(Path page) {
    browser.open(page.toAbsolutePath().toUri().toString(), 1280);
    browser.script(RULES);
    return (List<?>)
        browser.promised(
            "axe.run().then(found => found.violations.map("
                + "one => one.id + ': ' + one.help + ': ' + one.nodes[0].html.slice(0, 200)))");
  }

  @ParameterizedTest
  @MethodSource("pages")
  void nothingIsBroken(Path page) {
    assertThat(broken(page)).isEmpty();
  }

  @Test
  void whatIsBrokenIsFound() {
    Path page =
        Tools.write(
            folder.resolve("page.html"),
            "<!DOCTYPE html><html><head><title>a</title></head><body><p style='color:#ccc'>pale</p>"
                + "<input/></body></html>");
    assertThat(broken(page).toString()).contains("color-contrast", "html-has-lang", "label");
  }
}
