package plycrag.check.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.catalog.StrengthCatalog;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.frame.Joint;
import plycrag.layout.structure.Combination;
import plycrag.layout.structure.JointPath;
import plycrag.wall.room.GivenStructure.ScrewValues;

/** What holds joints, against figures worked out elsewhere. */
class JointCheckTest {
  private static final TimberValues C24 =
      new TimberValues(StrengthCatalog.find("C24").orElseThrow());
  private static final Vector3 UP = new Vector3(0, 0, 1);

  private static JointPath.Passed passed(Vector3 force, double pressed) {
    return new JointPath.Passed(force, new Vector3(0, 0, 0), pressed);
  }

  /** M10 4.6 through 45 + 45 mm of C24 across the grain bears 3210 N; 0.9/1.3 of it for design. */
  @Test
  void aBoltBearsWhatWasReckonedIndependently() {
    FoldBoltCheck bolt = new FoldBoltCheck(C24, 10, 45, UP);
    assertThat(bolt.capacity(Combination.HEAVY)).isCloseTo(3210 * 0.9 / 1.3, within(1.0));
    assertThat(bolt.capacity(Combination.PERMANENT)).isCloseTo(3210 * 0.6 / 1.3, within(1.0));
  }

  @Test
  void aBoltIsPulledAndShearedAtOnceButNotPressed() {
    FoldBoltCheck bolt = new FoldBoltCheck(C24, 10, 45, UP);
    double sheared = bolt.demand(null, passed(new Vector3(1000, 0, 0), 0));
    double pulled = bolt.demand(null, passed(new Vector3(1000, 0, 500), 0));
    double pressed = bolt.demand(null, passed(new Vector3(1000, 0, -500), 500));
    assertThat(sheared).isCloseTo(1000, within(1e-9));
    // a washer of 30 mm on a hole of 11 bears 3 × 2.5 × 611.7 = 4588.7 N across the grain
    assertThat(pulled).isCloseTo(1000 + 500 * 3210.0 / 4588.7, within(0.5));
    assertThat(pressed).isCloseTo(1000, within(1e-9));
  }

  /** A screw of 5.0 whose core is 3.2 counts as 3.52 (reference case C14). */
  @Test
  void screwsCountWithTheirCore() {
    ScrewShear told = new ScrewShear(C24, new ScrewValues(Optional.of(0.64), Optional.of(600.0)));
    assertThat(told.effective(5)).isCloseTo(3.52, within(1e-9));
    assertThat(told.knows(8)).isTrue();
    assertThat(told.knows(9)).isFalse();
    assertThat(told.status(0.5).words()).isEqualTo("ok");
    ScrewShear untold = new ScrewShear(C24, new ScrewValues(Optional.empty(), Optional.empty()));
    assertThat(untold.status(0.5).words()).startsWith("would pass if screws have a core");
    assertThat(untold.status(1.5).words()).isEqualTo("fails");
    assertThat(untold.throughPlywood(5, 18, 42))
        .isEqualTo(told.throughPlywood(5, 18, 42))
        .isLessThan(told.throughPlywood(6, 18, 42));
  }

  @Test
  void everyJointOfASampleHasALine() {
    Layout layout = Walls.sample(Path.of("params", "quay-wall.toml"));
    StructureReport report = Precheck.of(layout);
    Set<String> parts =
        report.lines().stream().map(StructureLine::part).collect(Collectors.toSet());
    assertThat(parts).containsAll(layout.joints().stream().map(Joint::mark).toList());
    assertThat(report.lines().stream().map(StructureLine::check))
        .contains(
            "bolt across the fold, shear and pull together",
            "screw through both members, sheared",
            "bearing of the end on the side")
        .anyMatch(check -> check.startsWith("gussets: the most loaded of"));
    assertThat(report.lines())
        .filteredOn(line -> line.utilisation().isEmpty())
        .allSatisfy(
            line ->
                assertThat(line.status().words())
                    .matches("ok|fails|not checked: needs .+|would pass if .+"));
  }
}
