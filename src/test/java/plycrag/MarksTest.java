package plycrag;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.layout.Layout;
import plycrag.layout.frame.Joint;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.joints.Hardware;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.Screw;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.skin.Piece;

/** One mark for one thing, whatever kind of thing it is. */
class MarksTest {
  /** Tiles of templates have one capital and a number, tools of a machine a T and a number. */
  private static final String TILE_OR_TOOL = "[A-Z][0-9]+";

  static List<Path> samples() {
    return TestFiles.samples();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void noTwoThingsShareAMark(Path sample) {
    Layout layout = Walls.sample(sample);
    List<String> marks = new ArrayList<>();
    layout.members().stream().map(Member::mark).forEach(marks::add);
    layout.joints().stream().map(Joint::mark).forEach(marks::add);
    layout.hardware().stream().map(Hardware::mark).forEach(marks::add);
    layout.sheets().stream().map(LaidSheet::mark).forEach(marks::add);
    layout.inserts().stream().map(Insert::mark).forEach(marks::add);
    layout.screws().stream().map(Screw::mark).forEach(marks::add);
    layout.facets().stream()
        .flatMap(one -> one.pieces().stream())
        .map(Piece::mark)
        .forEach(marks::add);
    assertThat(marks).doesNotHaveDuplicates();
    assertThat(layout.hardware())
        .extracting(Hardware::mark)
        .noneMatch(mark -> mark.toUpperCase(Locale.ROOT).matches(TILE_OR_TOOL));
  }

  /** Also in walls that no sample shows: the letters of all kinds differ. */
  @Test
  void noKindHasTheLettersOfAnother() {
    assertThat(
            Stream.concat(
                Stream.concat(
                    Stream.of(Hardware.Kind.values()).map(Hardware.Kind::letters),
                    Stream.of(MemberRole.values()).map(MemberRole::letters)),
                Stream.of("J", "S", "P", "CS", "A", "T")))
        .doesNotHaveDuplicates();
  }
}
