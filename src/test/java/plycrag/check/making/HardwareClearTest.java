package plycrag.check.making;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.finding.Finding;
import plycrag.geometry.Rod;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.joints.Hardware;
import plycrag.layout.joints.Hardware.Kind;

/** Brackets of three studs on two plates, and what is put beside them by hand. */
class HardwareClearTest {
  private static final Layout BAY = Walls.laidOut(Found.BAY);

  private static List<Finding> findings(Hardware... more) {
    List<Hardware> all = new ArrayList<>(BAY.hardware());
    all.addAll(List.of(more));
    return new HardwareClear()
        .findings(
            new Layout(
                BAY.wall(),
                BAY.facets(),
                BAY.support(),
                BAY.sheets(),
                BAY.faces(),
                BAY.offcuts(),
                BAY.fixings(),
                all));
  }

  private static Hardware screw(List<String> members, Vector3 from, Vector3 way) {
    Rod rod = new Rod(from, way, 80, 5);
    return new Hardware(
        "SC1", Kind.SCREW, List.of("J1"), members, from, way, new Hardware.Screwed(rod));
  }

  @Test
  void passesWhatIsChosen() {
    Found.by("hardware-clear", Found.BAY).isNothing();
    assertThat(findings()).isEmpty();
    assertThat(BAY.hardware()).extracting(Hardware::kind).containsOnly(Kind.BRACKET).hasSize(6);
  }

  /** Blocks end on both sides of a stud at one height: screws of 33 from both sides in 45 mm. */
  @Test
  void screwsFromBothSidesOfAStudPassEachOther() {
    String blocked =
        Found.BAY.replace("stud-spacing = 600", "stud-spacing = 600\nblocking-spacing = 600");
    Found.by("hardware-clear", blocked).isNothing();
  }

  /** The same bracket twice: in the frame itself another place does. */
  @Test
  void tellsTwoInOnePlace() {
    Hardware one = BAY.hardware().get(0);
    Hardware twin =
        new Hardware(
            "BR9", one.kind(), one.joints(), one.members(), one.place(), one.way(), one.form());
    List<Finding> findings = findings(twin);
    assertThat(findings).hasSize(1);
    assertThat(findings.get(0).isError()).isFalse();
    assertThat(findings.get(0).first()).isEqualTo("BR1");
    assertThat(findings.get(0).second()).isEqualTo("BR9");
    assertThat(findings.get(0).sentence()).startsWith("bracket BR1 and bracket BR9 share room, ");
    assertThat(findings.get(0).suggestion()).contains("bracket-screws");
  }

  /** The same anchor twice. */
  @Test
  void refusesTwoInOnePlaceOfWhatHoldsTheWallUp() {
    Layout fixed =
        Walls.laidOut(
            """
            [wall]
            width = 1200
            [[facet]]
            length = 1200
            [support]
            kind = "fixed"
            fixed-to = "masonry"
            """);
    List<Hardware> all = new ArrayList<>(fixed.hardware());
    Hardware anchor =
        all.stream().filter(one -> one.members().contains("LG1")).findFirst().orElseThrow();
    all.add(
        new Hardware(
            "AN99",
            anchor.kind(),
            anchor.joints(),
            anchor.members(),
            anchor.place(),
            anchor.way(),
            anchor.form()));
    List<Finding> findings =
        new HardwareClear()
            .findings(
                new Layout(
                    fixed.wall(),
                    fixed.facets(),
                    fixed.support(),
                    fixed.sheets(),
                    fixed.faces(),
                    fixed.offcuts(),
                    fixed.fixings(),
                    all));
    assertThat(findings).hasSize(1);
    assertThat(findings.get(0).isError()).isTrue();
  }

  /** Across the middle of the left stud, 600 mm up and 45 mm behind the sheet: it holds others. */
  @Test
  void refusesWhatLiesInOtherTimber() {
    Vector3 from = BAY.facets().get(0).facet().plane().toRoom(new Vector3(-20, 600, 63));
    Vector3 way = new Vector3(1, 0, 0);
    assertThat(findings(screw(List.of("ST1"), from, way))).isEmpty();
    List<Finding> findings = findings(screw(List.of("PL1"), from, way));
    assertThat(findings).hasSize(1);
    assertThat(findings.get(0).second()).isEqualTo("ST1");
    assertThat(findings.get(0).sentence()).contains("timber ST1");
  }

  /** Where the screws of the sheet are: 50 mm long, through 18 mm of it. */
  @Test
  void refusesWhatMeetsAScrewOfASheet() {
    Vector3 at =
        new Vector3(-20, BAY.screws().get(0).centre().getY(), BAY.wall().sheet().thickness() + 10);
    Vector3 from = BAY.facets().get(0).facet().plane().toRoom(at);
    List<Finding> findings =
        findings(screw(List.of("ST1", "PL1", "PL2"), from, new Vector3(1, 0, 0)));
    assertThat(findings).isNotEmpty();
    assertThat(findings.get(0).sentence()).contains("screw of a sheet");
  }
}
