package plycrag.check.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import plycrag.Walls;

/** What the preliminary check says, and what it does not. */
class PrecheckTest {
  private static final String FACE =
      """
      [wall]
      width = 1220
      raise = 310
      [[facet]]
      name = "main"
      angle = 25
      length = 1800
      [inserts]
      pitch-across = 240
      pitch-up = 240
      """;

  private static final String POSTS = FACE + "[support]\nkind = \"freestanding\"\n";

  private static final String TIED =
      FACE.replace("raise = 310\n", "")
          + "[support]\nkind = \"fixed\"\nfixed-to = \"masonry\"\nbehind = 300\n";

  private static StructureReport report(String toml) {
    return Precheck.of(Walls.laidOut(toml));
  }

  private static double worst(StructureReport report, Predicate<StructureLine> which) {
    return report.lines().stream()
        .filter(which)
        .flatMap(line -> line.utilisation().stream())
        .mapToDouble(Double::doubleValue)
        .max()
        .orElseThrow();
  }

  private static boolean isBending(StructureLine line) {
    return line.check().equals("bending");
  }

  @Test
  void nothingIsSaidWhereNothingIsKnownOfLoadsOrSupport() {
    assertThat(report(FACE).leftOut().orElseThrow()).contains("[support]");
    assertThat(report(POSTS + "[stock]\nenvironment = \"outdoors\"\n").leftOut().orElseThrow())
        .contains("wind");
    assertThat(report(POSTS + "[structure]\nbasis = \"none\"\n").leftOut().orElseThrow())
        .contains("basis");
    assertThat(report(POSTS).leftOut()).isEmpty();
  }

  @Test
  void anUnknownGradeIsNotTakenForAnother() {
    StructureReport report = report(POSTS + "[stock]\ntimber-grade = \"SPF No. 2\"\n");
    assertThat(report.lines()).hasSize(1);
    assertThat(report.unchecked()).isEqualTo(1);
    assertThat(report.lines().get(0).status().words())
        .startsWith("not checked: needs EC5 values of the timber, SPF No. 2");
    assertThat(report(POSTS + "[stock]\ntimber-grade = \"c24\"\n").unchecked()).isEqualTo(1);
    String answered =
        POSTS + "[stock]\ntimber-grade = \"SPF No. 2\"\n[structure]\nstrength-class = \"C16\"\n";
    assertThat(worst(report(answered), PrecheckTest::isBending))
        .isGreaterThan(worst(report(POSTS), PrecheckTest::isBending));
  }

  @Test
  void everyMemberHasEveryCheck() {
    StructureReport report = report(POSTS);
    for (String mark : List.of("ST1", "RA1", "PO1", "PL1")) {
      assertThat(
              report.lines().stream()
                  .filter(line -> line.part().equals(mark))
                  .map(StructureLine::check))
          .contains(
              "bending",
              "compression with buckling",
              "lateral buckling",
              "shear",
              "torsion",
              "deflection in use");
    }
    assertThat(report.lines().stream().map(StructureLine::check))
        .contains("topples forward", "topples backward", "slides")
        .anyMatch(check -> check.startsWith("keeps to the floor: "));
  }

  @Test
  void anchorsAreHeldAgainstWhatTheirMakerDeclares() {
    StructureReport untold = report(TIED);
    assertThat(untold.unchecked()).isPositive();
    assertThat(
            untold.lines().stream()
                .filter(line -> line.check().equals("anchor pulled"))
                .map(line -> line.status().words()))
        .allSatisfy(words -> assertThat(words).startsWith("not checked: needs what the anchor"));
    StructureReport told = report(TIED + "[structure]\nanchor-pull = 0.1\nanchor-shear = 100\n");
    assertThat(told.lines())
        .filteredOn(line -> line.check().startsWith("anchor"))
        .isNotEmpty()
        .noneMatch(line -> line.status() instanceof LineStatus.NotChecked);
    assertThat(
            told.lines().stream()
                .filter(line -> line.check().equals("anchor pulled"))
                .map(line -> line.status().words()))
        .contains("fails");
  }

  @Test
  void lessLoadNeverRaisesAUtilisation() {
    StructureReport usual = report(TIED);
    StructureReport light = report(TIED + "[structure]\nclimber-mass = 40\nstill-climbers = 0\n");
    for (StructureLine line : light.lines()) {
      line.utilisation()
          .ifPresent(
              one ->
                  assertThat(one)
                      .as(line.part() + " " + line.check())
                      .isLessThanOrEqualTo(
                          worst(
                                  usual,
                                  other ->
                                      other.part().equals(line.part())
                                          && other.check().equals(line.check()))
                              * (1 + 1e-9)));
    }
    assertThat(worst(light, PrecheckTest::isBending))
        .isLessThan(worst(usual, PrecheckTest::isBending));
  }

  @Test
  void deeperTimberAndAShorterFaceAreBentLess() {
    double usual = worst(report(TIED), PrecheckTest::isBending);
    assertThat(worst(report(TIED + "[frame]\nsection = [45, 140]\n"), PrecheckTest::isBending))
        .isLessThan(usual);
    assertThat(worst(report(TIED.replace("1800", "1300")), PrecheckTest::isBending))
        .isLessThan(usual);
  }

  @Test
  void theImageOfAWallIsAsStrong() {
    StructureReport wall = report(TIED);
    StructureReport image = report(TIED.replace("[wall]\n", "[wall]\nmirrored = true\n"));
    for (String check : List.of("bending", "shear", "compression with buckling")) {
      List<Double> its = figures(wall, check);
      List<Double> mirrored = figures(image, check);
      assertThat(mirrored).hasSameSizeAs(its);
      for (int i = 0; i < its.size(); i++) {
        assertThat(mirrored.get(i)).as(check).isCloseTo(its.get(i), within(0.002));
      }
    }
  }

  /** In order; the grid for marking has places of the image out by a fraction of a millimetre. */
  private static List<Double> figures(StructureReport report, String check) {
    return report.lines().stream()
        .filter(line -> line.check().equals(check))
        .map(line -> line.utilisation().orElseThrow())
        .sorted()
        .toList();
  }

  @Test
  void whatSwaysIsToldInWords() {
    String low = POSTS.replace("1800", "1150") + "lateral = \"none\"\n";
    StructureReport swaying = report(low);
    assertThat(
            swaying.lines().stream()
                .filter(line -> line.status() instanceof LineStatus.Fails)
                .map(StructureLine::check))
        .anyMatch(check -> check.startsWith("stands still: ") && check.contains("along the wall"));
  }
}
