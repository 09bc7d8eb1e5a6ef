package plycrag.conformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.TestFiles;

/** Chromium shows the samples' books on a phone and on a desk. */
@Tag("conformance")
class PageInBrowserTest {
  private static final Path SAMPLES = Path.of("out-samples");

  @TempDir private Path folder;

  static Stream<Path> books() {
    return TestFiles.list(SAMPLES, "index.html").stream();
  }

  /** A page around the book, as wide as a device, that tells what became of it. */
  private static String around(int width, String address) {
    return """
    <!DOCTYPE html><html><body><iframe id="book" src="BOOK" style="width:WIDEpx;height:800px;border:0">
    </iframe><p id="told"></p><script>
    window.onload = () => {
      const inner = document.getElementById("book");
      const page = inner.contentDocument.documentElement;
      const asked = inner.contentWindow.performance.getEntriesByType("resource").length;
      document.getElementById("told").textContent =
        "wide " + (page.scrollWidth - page.clientWidth) + " asked " + asked
        + " of " + page.clientWidth;
    };
    </script></body></html>
    """
        .replace("WIDE", Integer.toString(width))
        .replace("BOOK", address);
  }

  private String shown(Path book, int width) throws IOException {
    Path page = folder.resolve("around.html");
    Files.writeString(page, around(width, book.toAbsolutePath().toUri().toString()));
    return Tools.output(
        "chromium",
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        "--allow-file-access-from-files",
        "--enable-logging=stderr",
        "--user-data-dir=" + folder.resolve("profile"),
        "--window-size=1400,900",
        "--virtual-time-budget=5000",
        "--dump-dom",
        page.toUri().toString());
  }

  @Test
  void aPageThatIsTooWideIsFound() throws IOException {
    Path wide = folder.resolve("wide.html");
    Files.writeString(
        wide, "<!DOCTYPE html><html><body><p style='width:2000px'>wide</p></body></html>");
    assertThat(shown(wide, 360)).doesNotContain("wide 0 ");
  }

  @ParameterizedTest
  @MethodSource("books")
  void nothingOverflowsIsAskedForOrComplainedOf(Path book) throws IOException {
    for (int width : List.of(360, 1280)) {
      String shown = shown(book, width);
      assertThat(shown).contains("wide 0 asked 0 of").doesNotContain("CONSOLE");
    }
  }
}
