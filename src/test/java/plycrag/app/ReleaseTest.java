package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.TestFiles;
import plycrag.files.OutputFile;

class ReleaseTest {
  private static OutputFile file(String path, String resource) {
    return OutputFile.text(path, TestFiles.text(resource));
  }

  @Test
  void aBrokenDrawingIsADefect() {
    List<OutputFile> dxf = List.of(file("drawings/a.dxf", "must-fail/dxf/circle-twice.dxf"));
    assertThatThrownBy(() -> Release.of(dxf)).hasMessageStartingWith("drawings/a.dxf: coincident");
    List<OutputFile> svg = List.of(file("drawings/a.svg", "must-fail/svg/exponent.svg"));
    assertThatThrownBy(() -> Release.of(svg)).hasMessageContaining("not a number");
    List<OutputFile> pdf = List.of(file("drawings/a.pdf", "must-fail/pdf/dated.pdf"));
    assertThatThrownBy(() -> Release.of(pdf)).hasMessage("drawings/a.pdf: dated");
  }

  @Test
  void otherFilesPass() {
    List<OutputFile> lists = List.of(OutputFile.text("lists/holes.csv", "mark\n"));
    assertThat(Release.of(lists)).isEqualTo(lists);
  }
}
