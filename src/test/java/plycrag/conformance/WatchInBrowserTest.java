package plycrag.conformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plycrag.app.Plycrag;

/** A page that is open shows what is saved, and says what is wrong with it. */
@Tag("conformance")
class WatchInBrowserTest {
  private static final String WALL =
      "[wall]\nname = \"Slipway\"\nwidth = 1200\n[[facet]]\nlength = 1200\n";

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();

  private void save(String text) throws IOException {
    Path draft = Files.writeString(folder.resolve("draft"), text);
    Files.move(
        draft, folder.resolve("wall.toml"), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
  }

  private String address() throws InterruptedException {
    Pattern told = Pattern.compile("http://\\S+");
    for (Matcher found = told.matcher(out.toString()); ; found = told.matcher(out.toString())) {
      if (found.find()) {
        return found.group();
      }
      Thread.sleep(20);
    }
  }

  @Test
  void whatIsSavedIsSeen() throws IOException, InterruptedException {
    save(WALL);
    PrintWriter printed = new PrintWriter(out, true);
    Thread watching =
        new Thread(
            () ->
                new Plycrag(printed, printed).run("watch", folder.resolve("wall.toml").toString()));
    watching.start();
    try (Browser browser = new Browser(folder.resolve("profile"))) {
      browser.open(address(), 360);
      browser.until("document.body.dataset.shown > 0");
      browser.assertFits();
      String before = browser.picture();

      save(WALL.replace("length = 1200", "length = 1800\nangle = 25"));
      browser.until("document.getElementById('figures').textContent.includes('2.1')");
      assertThat(browser.picture()).isNotEqualTo(before);
      String good = browser.text("#figures");

      save(WALL.replace("width", "widht"));
      browser.until("!document.getElementById('banner').hidden");
      assertThat(browser.text("#banner")).contains("wall.toml:3:1", "width");
      assertThat(browser.text("#figures")).isEqualTo(good);

      save(WALL.replace("Slipway", "Slipway again"));
      browser.until("document.getElementById('title').textContent == 'Slipway again'");
      assertThat(browser.at("#banner").isDisplayed()).isFalse();
      browser.assertQuiet(address());
    } finally {
      watching.interrupt();
      watching.join();
    }
  }

  @Test
  void aFileThatIsWrongFromTheStartIsToldOfUntilItIsMended()
      throws IOException, InterruptedException {
    save("[wall\n");
    PrintWriter printed = new PrintWriter(out, true);
    Thread watching =
        new Thread(
            () ->
                new Plycrag(printed, printed).run("watch", folder.resolve("wall.toml").toString()));
    watching.start();
    try (Browser browser = new Browser(folder.resolve("profile"))) {
      browser.open(address(), 1280);
      browser.until("document.getElementById('banner').textContent.includes('wall.toml:1:')");
      save(WALL);
      browser.until("document.body.dataset.shown > 0");
      assertThat(browser.text("#title")).isEqualTo("Slipway");
    } finally {
      watching.interrupt();
      watching.join();
    }
  }
}
