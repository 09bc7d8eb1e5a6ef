package plycrag.conformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** Chromium shows the page of a wall in space, and a person finds everything on it. */
@Tag("conformance")
class ModelPageInBrowserTest {
  private static final Path PAGE = Path.of("out-samples/boat-bay/model.html");

  @TempDir private Path folder;

  private Browser browser;

  @BeforeEach
  void start() {
    browser = new Browser(folder.resolve("profile"));
  }

  @AfterEach
  void stop() {
    browser.close();
  }

  private void open(int width) {
    browser.open(PAGE.toAbsolutePath().toUri().toString(), width);
    browser.until("document.body.dataset.shown > 200");
  }

  @Test
  void fitsAPhoneAndADeskAndKeepsQuiet() {
    for (int width : new int[] {360, 1280}) {
      open(width);
      browser.assertFits();
      browser.assertQuiet("");
    }
  }

  @Test
  void theSliderBuildsTheWallStepByStep() {
    open(1280);
    String whole = browser.picture();
    int steps = Integer.parseInt(browser.at("#step").getDomAttribute("max"));
    Set<String> pictures = new HashSet<>();
    Set<String> words = new HashSet<>();
    for (int step = steps; step > 0; step--) {
      browser.at("#step").sendKeys(Keys.ARROW_LEFT);
      pictures.add(browser.picture());
      words.add(browser.text("#step-words"));
    }
    assertThat(browser.text("#step-words")).isEqualTo("Nothing stands yet.");
    assertThat(words).hasSizeGreaterThan(3);
    assertThat(pictures).hasSizeGreaterThan(steps / 2).doesNotContain(whole);
  }

  @Test
  void whatIsShownCanBeLeftOut() {
    open(1280);
    String whole = browser.picture();
    for (String kind : new String[] {"piece", "member", "support", "hardware", "insert"}) {
      browser.at("input[name=" + kind + "]").click();
      assertThat(browser.picture()).as(kind).isNotEqualTo(whole);
      browser.at("input[name=" + kind + "]").click();
      assertThat(browser.picture()).as(kind + " again").isEqualTo(whole);
    }
  }

  @Test
  void aPartThatIsWrittenOrClickedIsToldOf() {
    open(1280);
    browser.at("#mark").sendKeys("ST1", Keys.TAB);
    assertThat(browser.text("#part")).contains("ST1", "stud", "Step ", "lists/cut-list.csv");
    browser.at("#looks button").click();
    browser.at("#canvas canvas").click();
    assertThat(browser.text("#part")).doesNotContain("ST1").contains("Step ", "lists/");
  }

  @Test
  void keysTurnIt() {
    open(1280);
    browser.script("document.getElementById('canvas').focus()");
    String before = browser.picture();
    browser.focused().sendKeys(Keys.ARROW_LEFT);
    assertThat(browser.picture()).isNotEqualTo(before);
  }

  @Test
  void tabReachesEverythingThatCanBeUsed() {
    open(1280);
    Set<Object> reached = new HashSet<>();
    for (int press = 0; press < 60; press++) {
      browser.focused().sendKeys(Keys.TAB);
      reached.add(
          browser.script(
              "const on = document.activeElement; return on.id || on.name || on.textContent"));
    }
    assertThat(reached)
        .contains("canvas", "In front", "From behind", "step", "piece", "room", "mark");
  }
}
