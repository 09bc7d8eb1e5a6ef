package plycrag.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OutputFileTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "/", "/etc/x", "..", "../x", "a/../b", "a//b", "a/", "./a", ".a", "a\\b", "C:/a", "a b",
        "a\nb", "é", "a:b", "-a"
      })
  void aPathThatSomeFileSystemWouldMisreadIsRejected(String path) {
    assertThatThrownBy(() -> OutputFile.text(path, ""))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"index.html", "cnc/sheet-S1-front-t01.ngc", "templates/main_1.svg"})
  void pathsOfTheContractAreTaken(String path) {
    assertThat(OutputFile.text(path, "").path()).isEqualTo(path);
  }

  /** RFC 3629: é is C3 A9. */
  @Test
  void textIsUtf8WithoutByteOrderMark() {
    assertThat(OutputFile.text("a", "é").content()).containsExactly(0xC3, 0xA9);
  }

  @Test
  void contentCannotBeChangedFromOutside() {
    byte[] bytes = {1};
    OutputFile file = new OutputFile("a", bytes);
    bytes[0] = 2;
    file.content()[0] = 3;

    assertThat(file.content()).containsExactly(1);
  }
}
