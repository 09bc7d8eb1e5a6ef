package plycrag;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A part, its drawing and its line in a list find each other by mark on the published pages. */
class PageLinksTest {
  private static final Pattern ID = Pattern.compile(" id=\"([^\"]+)\"");
  private static final Pattern WAY = Pattern.compile(" href=\"#([^\"]+)\"");
  private static final Pattern FROM_DRAWING =
      Pattern.compile("<a href=\"#part-([A-Z]+[0-9]+b?)\"><text[^>]*>([^<]+)</text></a>");

  static List<Path> folders() {
    return SamplesTest.folders();
  }

  private static List<String> found(Pattern pattern, String page) {
    return pattern.matcher(page).results().map(one -> one.group(1)).toList();
  }

  @ParameterizedTest
  @MethodSource("folders")
  void everyWayEndsAtOnePlace(Path folder) {
    String page = TestFiles.read(folder.resolve("index.html"));
    List<String> ids = found(ID, page);
    assertThat(ids).doesNotHaveDuplicates();
    assertThat(ids).containsAll(found(WAY, page));
  }

  /** The marks are those of the cut list as a file. */
  @ParameterizedTest
  @MethodSource("folders")
  void everyPartIsFoundBothWays(Path folder) {
    String page = TestFiles.read(folder.resolve("index.html"));
    Set<String> marks = new TreeSet<>();
    for (String row :
        TestFiles.read(folder.resolve("lists/cut-list.csv")).lines().skip(1).toList()) {
      marks.addAll(List.of(row.substring(0, row.indexOf(',')).split(" ", -1)));
    }
    Set<String> drawn = new TreeSet<>();
    for (MatchResult link : FROM_DRAWING.matcher(page).results().toList()) {
      assertThat(link.group(2)).startsWith(link.group(1));
      drawn.add(link.group(1));
    }
    assertThat(drawn).containsAll(marks);
    for (String mark : marks) {
      assertThat(page).contains("<a id=\"part-" + mark + "\" href=\"#figure-");
    }
  }
}
