package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import plycrag.MeetingTexts;
import plycrag.files.OutputFile;

/** However facets meet, a wall is judged and delivered, and never a defect. */
class AnyMeetingTest {

  @Provide
  Arbitrary<String> corners() {
    return MeetingTexts.corners();
  }

  @Provide
  Arbitrary<String> openings() {
    return MeetingTexts.openingsAtFolds();
  }

  @Property(tries = 12)
  void everyCornerIsJudged(@ForAll("corners") String file) {
    assertThat(judged(file)).isInstanceOf(Design.Judged.class);
  }

  @Property(tries = 20)
  void everyOpeningAtAFoldIsJudged(@ForAll("openings") String file) {
    assertThat(judged(file)).isInstanceOf(Design.Judged.class);
  }

  @Property(tries = 2)
  void cornersAreDelivered(@ForAll("corners") String file) {
    assertDelivered(file);
  }

  @Property(tries = 2)
  void openingsAtFoldsAreDelivered(@ForAll("openings") String file) {
    assertDelivered(file);
  }

  private static Design judged(String file) {
    return Designs.of("wall.toml", file);
  }

  private static void assertDelivered(String file) {
    if (judged(file) instanceof Design.Judged judged) {
      assertThat(Deliverable.of(judged))
          .extracting(OutputFile::path)
          .doesNotHaveDuplicates()
          .contains("index.html", "drawings/all-parts.svg");
    }
  }
}
