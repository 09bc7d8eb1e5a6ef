package plycrag.files.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.document.LabelSheet;
import plycrag.document.LabelSheet.Label;

class LabelWriterTest {

  @Test
  void everyLabelSaysWhatItIsGiven() throws Exception {
    Label stud = new Label("ST1", "stud, 45 x 90 mm", "Facet main.", "Joined to PL1 PL2.");
    Label loose = new Label("P1", "piece", "Facet main.", "");
    String text = LabelWriter.write(new LabelSheet("River bay", "", "", List.of(stud, loose)));
    PageReader page = new PageReader(text);
    assertThat(page.texts("h1")).containsExactly("River bay: labels");
    assertThat(page.texts("p"))
        .containsExactly(
            "ST1",
            "stud, 45 x 90 mm",
            "Facet main.",
            "Joined to PL1 PL2.",
            "P1",
            "piece",
            "Facet main.");
    assertThat(page.all("li")).hasSize(2);
    assertThat(text).doesNotContain("http:", "https:", "url(");
  }

  @ParameterizedTest
  @ValueSource(strings = {"<script>alert(1)</script>", "a & b", "\" onload=\"x", "%s %d"})
  void textStaysText(String text) throws Exception {
    Label label = new Label(text, text, text, text);
    PageReader page =
        new PageReader(LabelWriter.write(new LabelSheet(text, text, text, List.of(label))));
    assertThat(page.all("script")).isEmpty();
    assertThat(page.texts("p")).hasSize(6).allMatch(one -> one.equals(text));
  }
}
