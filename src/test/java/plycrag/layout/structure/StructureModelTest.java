package plycrag.layout.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plycrag.Walls;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.support.Anchor;
import plycrag.solve.frame.Bar;
import plycrag.solve.frame.FrameAnalysis;
import plycrag.solve.frame.FrameLoad;
import plycrag.solve.frame.FrameNode;
import plycrag.solve.frame.FrameOutcome;
import plycrag.solve.frame.FrameSolution;
import plycrag.solve.frame.LoadCase;

/** The samples as frames: in equilibrium with loads that were added up by other means. */
class StructureModelTest {
  private static final ElasticTimber C24 = new ElasticTimber(11_000, 690, 420);
  private static final FrameVariant PINNED = new FrameVariant(false, true);

  private static Layout sample(String name) {
    return Walls.sample(Path.of("params", name + ".toml"));
  }

  private static StructureModel model(String name, double angle, FrameVariant variant) {
    return StructureModel.of(sample(name), angle, C24, variant);
  }

  private static FrameSolution solved(StructureModel model, List<FrameLoad> loads) {
    FrameOutcome outcome = FrameAnalysis.of(model.frame()).firstOrder(new LoadCase("loads", loads));
    assertThat(outcome).isInstanceOf(FrameSolution.class);
    return (FrameSolution) outcome;
  }

  private static ClimberPlace top(String name, StructureModel model, double angle) {
    return ClimberPlaces.of(sample(name), model, angle, 100).stream()
        .reduce((one, other) -> other.tip().z() > one.tip().z() ? other : one)
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"boat-bay,0", "quay-wall,0", "sail-loft,0", "tide-gate,20", "tide-gate,45"})
  void whatStandsCarriesItsWeightAndAClimber(String name, double angle) {
    for (FrameVariant variant : List.of(PINNED, new FrameVariant(true, true))) {
      StructureModel model = model(name, angle, variant);
      SelfWeight weight = new SelfWeight(sample(name), model);
      List<FrameLoad> loads = new ArrayList<>(weight.loads());
      loads.addAll(weight.holds(10));
      ClimberPlace top = top(name, model, angle);
      loads.add(top.load(new Vector3(0, 0, -1600)));
      FrameSolution solution = solved(model, loads);
      double up = solution.reactions().values().stream().mapToDouble(one -> one.force().z()).sum();
      assertThat(up)
          .as(variant.words())
          .isCloseTo(weight.kilograms(10) * 9.80665 + 1600, within(0.01 * up));
    }
  }

  @ParameterizedTest
  @CsvSource({"boat-bay", "quay-wall", "sail-loft", "tide-gate"})
  void everyMemberIsHeld(String name) {
    assertThat(model(name, 20, PINNED).members())
        .allSatisfy(member -> assertThat(member.isHeld()).as(member.axis().mark()).isTrue());
  }

  /**
   * By hand: the upper facet of the fixed wall is bolted to the lower one and hangs on its ties, so
   * that what the upper ledger's anchors carry balances the climber about the line of bolts.
   */
  @Test
  void tiesOfTheFixedWallCarryWhatMomentsAboutItsFoldAsk() {
    StructureModel model = model("quay-wall", 0, PINNED);
    ClimberPlace top = top("quay-wall", model, 0);
    Vector3 climber = new Vector3(0, 0, -2400);
    FrameSolution solution = solved(model, List.of(top.load(climber)));
    Vector3 hinge = place(model, "PL3 at");
    List<String> upper =
        sample("quay-wall").support().orElseThrow().anchors().stream()
            .filter(anchor -> anchor.member().equals("LG2"))
            .map(Anchor::mark)
            .toList();
    double held =
        solution.reactions().entrySet().stream()
            .filter(one -> isOf(upper, model, one.getKey()))
            .mapToDouble(one -> one.getKey().place().minus(hinge).cross(one.getValue().force()).x())
            .sum();
    double upset = top.tip().minus(hinge).cross(climber).x();
    assertThat(Math.abs(upset)).isBetween(1.4e6, 1.7e6);
    assertThat(-held).isCloseTo(upset, within(0.02 * Math.abs(upset)));
  }

  private static boolean isOf(List<String> anchors, StructureModel model, FrameNode node) {
    return anchors.stream()
        .anyMatch(
            mark ->
                model.anchors().get(mark).equals(node)
                    || node.name().equals("building at " + mark));
  }

  private static Vector3 place(StructureModel model, String name) {
    return model.frame().nodes().stream()
        .filter(node -> node.name().startsWith(name))
        .findFirst()
        .orElseThrow()
        .place();
  }

  /** By hand: chains turn with the facet about its hinges, and carry its moment about them. */
  @Test
  void chainsOfTheHingedWallCarryWhatMomentsAboutItsHingesAsk() {
    StructureModel model = model("tide-gate", 30, PINNED);
    ClimberPlace top = top("tide-gate", model, 30);
    Vector3 climber = new Vector3(0, 0, -2400);
    FrameSolution solution = solved(model, List.of(top.load(climber)));
    Vector3 hinge = place(model, "PL3 at");
    double held = 0;
    for (Bar bar : model.frame().bars()) {
      if (model.tethers().contains(bar.name())) {
        Vector3 way = bar.end().place().minus(bar.start().place()).unit();
        Vector3 pull = way.times(solution.axial(bar.name()));
        held += bar.start().place().minus(hinge).cross(pull).x();
      }
    }
    double upset = top.tip().minus(hinge).cross(climber).x();
    assertThat(-held).isCloseTo(upset, within(0.02 * Math.abs(upset)));
  }
}
