package plycrag.lists;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import plycrag.TestFiles;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.check.Found;
import plycrag.document.FeatureMap.Feature;

class LayoutMapTest {
  private static final CheckedLayout WALL =
      Walls.judged(TestFiles.text("must-fail/layout/top-row-in-plate.toml"));

  private static Map<String, List<Feature>> byKind() {
    return LayoutMap.of(WALL).features().stream()
        .collect(Collectors.groupingBy(feature -> feature.properties().get("kind").text()));
  }

  @Test
  void holdsEveryThingUnderItsKindFacetAndMark() {
    Map<String, List<Feature>> kinds = byKind();
    assertThat(kinds.keySet())
        .containsExactlyInAnyOrder(
            "facet", "setback", "piece", "member", "fastener-line", "screw", "insert");
    assertThat(kinds.get("insert")).hasSize(50);
    assertThat(kinds.get("screw")).hasSize(WALL.layout().screws().size());
    assertThat(kinds.values().stream().flatMap(List::stream))
        .allMatch(feature -> feature.properties().get("facet").text().equals("main"))
        .allMatch(feature -> !feature.properties().get("mark").text().isEmpty());
    Map<String, ?> insert = kinds.get("insert").get(0).properties();
    assertThat(insert).containsKeys("hole_mm", "flange_mm");
    assertThat(kinds.get("screw").get(0).properties()).containsKey("member");
  }

  /** The wall is raised: its bottom plate lies below the sheet, its studs run on below it. */
  @Test
  void membersAreShownWhereTheyTouchTheSheets() {
    List<Feature> members = byKind().get("member");
    assertThat(members.stream().map(feature -> feature.properties().get("mark").text()))
        .containsExactly("PL2", "ST1", "ST2", "ST3", "BL1", "BL2");
    assertThat(members)
        .allMatch(feature -> feature.geometry().getEnvelopeInternal().getMinY() >= 0);
  }

  /** A cutout stands in the map as it was told, under its own name, where its facet is open. */
  @Test
  void cutoutsAreShownAsTheyAreTold() {
    String cutout =
        """
        [[cutout]]
        name = "socket"
        left = 500
        low = 400
        width = 80
        height = 90
        """;
    CheckedLayout wall = Walls.judged(Found.bay("900", "900") + cutout);
    Map<String, List<Feature>> kinds =
        LayoutMap.of(wall).features().stream()
            .collect(Collectors.groupingBy(feature -> feature.properties().get("kind").text()));
    assertThat(kinds.get("cutout")).hasSize(1);
    Feature socket = kinds.get("cutout").get(0);
    assertThat(socket.geometry().toText())
        .isEqualTo("POLYGON ((500 400, 580 400, 580 490, 500 490, 500 400))");
    assertThat(socket.properties().get("mark").text()).isEqualTo("socket");
    assertThat(socket.geometry().getInteriorPoint().within(kinds.get("facet").get(0).geometry()))
        .isFalse();
  }

  /**
   * A zone of 600 by 400 from 100, 100; its points 300 and 500 from there, 150 up; the setback 100.
   */
  @Test
  void zonesPointsAndTheSetbackLieWhereTheyAreTold() {
    String zone =
        """
        [[zone]]
        name = "smears"
        left = 100
        low = 100
        width = 600
        height = 400
        points = "screw-points"
        pattern = "lines"
        columns = [300, 500]
        rows = [150]
        """;
    CheckedLayout wall = Walls.judged(Found.bay("900", "900", "setback = 100") + zone);
    assertThat(
            LayoutMap.of(wall).features().stream()
                .filter(one -> !one.properties().get("kind").text().matches("member|screw|fast.*"))
                .map(
                    one ->
                        one.properties().get("kind").text()
                            + " "
                            + one.geometry().getEnvelopeInternal()))
        .containsExactly(
            "facet Env[0.0 : 1200.0, 0.0 : 1200.0]",
            "setback Env[100.0 : 1100.0, 100.0 : 1100.0]",
            "piece Env[0.0 : 1200.0, 0.0 : 1200.0]",
            "insert Env[900.0 : 900.0, 900.0 : 900.0]",
            "screw-point Env[400.0 : 400.0, 250.0 : 250.0]",
            "screw-point Env[600.0 : 600.0, 250.0 : 250.0]",
            "zone Env[100.0 : 700.0, 100.0 : 500.0]");
  }
}
