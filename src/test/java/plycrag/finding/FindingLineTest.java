package plycrag.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FindingLineTest {

  @Test
  void beginsWithFileLineAndColumnAsEditorsReadThem() {
    Finding finding =
        Finding.inFile(
            "sheet.thickness", new Place.InFile("bay.toml", 7, 3), "wrong; nearest; allowed");
    assertThat(FindingLine.of(finding))
        .isEqualTo("bay.toml:7:3: sheet.thickness: wrong; nearest; allowed");
  }

  @Test
  void endsWithTheSentenceWhereNothingIsSuggested() {
    Finding finding = Finding.inFile("facet", new Place.InFile("bay.toml", 1, 1), "wrong; allowed");
    assertThat(FindingLine.of(finding)).isEqualTo("bay.toml:1:1: facet: wrong; allowed");
  }

  @Test
  void beginsWithTheSeverityWhereThereIsNoFile() {
    Finding finding =
        new Finding(
            "head-room",
            Severity.WARNING,
            new Place.WholeWall(),
            "",
            "",
            Optional.empty(),
            "too high",
            "");
    assertThat(FindingLine.of(finding)).isEqualTo("warning: head-room: too high");
  }

  @Test
  void carriesTheFileOfAFindingOnItsWall() {
    Finding finding =
        new Finding(
            "head-room",
            Severity.WARNING,
            new Place.WholeWall(),
            "",
            "",
            Optional.empty(),
            "too high",
            "lower it");
    assertThat(FindingLine.of("walls/bay.toml", new FindingGroup(List.of(finding))))
        .isEqualTo("walls/bay.toml: warning: head-room: too high; lower it");
  }
}
