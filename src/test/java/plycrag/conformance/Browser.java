package plycrag.conformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.logging.Level;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/**
 * Chromium, used as a person uses it. Its graphics are reckoned, since machines for tests have
 * none.
 */
final class Browser implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  private final ChromeDriver driver;

  Browser(Path profile) {
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary("/usr/bin/chromium");
    options.setCapability("goog:loggingPrefs", logs);
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--use-angle=swiftshader",
        "--enable-unsafe-swiftshader",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--no-first-run",
        "--user-data-dir=" + profile);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(Path.of("/usr/bin/chromedriver").toFile())
            .build();
    driver = new ChromeDriver(service, options);
  }

  /** Opens a page of so many pixels, and waits until it shows its wall. */
  void open(String address, int width) {
    driver.manage().window().setSize(new Dimension(width, 900));
    driver.get(address);
  }

  /** Waits until a script finds that something is so. */
  void until(String condition) {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (!Boolean.TRUE.equals(script("return Boolean(" + condition + ")"))) {
      assertThat(System.nanoTime()).as("waited too long for " + condition).isLessThan(end);
      Thread.onSpinWait();
    }
  }

  Object script(String text) {
    return driver.executeScript(text);
  }

  /** What a script that promises something promises. */
  Object promised(String expression) {
    driver.manage().timeouts().scriptTimeout(PATIENCE);
    return driver.executeAsyncScript(
        "const done = arguments[arguments.length - 1]; (" + expression + ").then(done)");
  }

  WebElement at(String selector) {
    return driver.findElement(By.cssSelector(selector));
  }

  String text(String selector) {
    return at(selector).getText();
  }

  /** What the page has the focus on. */
  WebElement focused() {
    return driver.switchTo().activeElement();
  }

  /** The picture as it stands, for another to be told from it. */
  String picture() {
    return (String) script("return document.querySelector('canvas').toDataURL()");
  }

  /** Nothing is on the console, and nothing was asked for elsewhere. */
  void assertQuiet(String allowed) {
    List<LogEntry> told = driver.manage().logs().get(LogType.BROWSER).getAll();
    assertThat(told).extracting(LogEntry::getMessage).isEmpty();
    Object asked =
        script("return performance.getEntriesByType('resource').map(one => one.name).join(' ')");
    assertThat(asked.toString().replace(allowed, "").replaceAll("data:\\S*", ""))
        .doesNotContain("://");
  }

  /** Nothing lies beside the page. */
  void assertFits() {
    assertThat(
            script(
                "const page = document.documentElement;"
                    + " return page.scrollWidth - page.clientWidth"))
        .isEqualTo(0L);
  }

  @Override
  public void close() {
    driver.quit();
  }
}
