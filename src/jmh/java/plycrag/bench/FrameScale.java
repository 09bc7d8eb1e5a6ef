package plycrag.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import plycrag.geometry.Vector3;
import plycrag.solve.frame.Acting;
import plycrag.solve.frame.Attachment;
import plycrag.solve.frame.Bar;
import plycrag.solve.frame.Beam;
import plycrag.solve.frame.BeamEnd;
import plycrag.solve.frame.BeamSection;
import plycrag.solve.frame.CriticalLoad;
import plycrag.solve.frame.FrameAnalysis;
import plycrag.solve.frame.FrameLoad;
import plycrag.solve.frame.FrameModel;
import plycrag.solve.frame.FrameNode;
import plycrag.solve.frame.FrameOutcome;
import plycrag.solve.frame.FrameSolution;
import plycrag.solve.frame.FrameSupport;
import plycrag.solve.frame.Freedom;
import plycrag.solve.frame.LoadCase;
import plycrag.solve.frame.SectionForces;

/**
 * A leaning wall on stations of stud, post and ties, about so many beams in all, on feet that only
 * push and with crossed ties that only pull, under its weight and one climber at so many places.
 */
@State(Scope.Benchmark)
public class FrameScale {
  private static final int CASES = 200;
  private static final int LEVELS = 5;
  private static final double ELASTICITY = 11_000;
  private static final double SHEAR_MODULUS = 690;
  private static final int WARM_SIZE = 50;
  private static final int WARM_ROUNDS = 30;

  private static final BeamSection STUD = BeamSection.rectangle(145, 45, ELASTICITY, SHEAR_MODULUS);
  private static final BeamSection POST = BeamSection.rectangle(95, 45, ELASTICITY, SHEAR_MODULUS);

  @Param({"50", "150", "600"})
  int size;

  private FrameModel model;
  private List<LoadCase> cases;

  /** Makes the frame, once small ones have warmed the machine up. */
  @Setup
  public void frame() {
    make(WARM_SIZE);
    for (int round = 0; round < WARM_ROUNDS; round++) {
      forces();
      critical();
      secondOrder();
    }
    make(size);
  }

  private void make(int beams) {
    model = model(Math.round(beams / 19f));
    cases = cases(model);
  }

  private static FrameModel model(int stations) {
    List<Beam> beams = new ArrayList<>();
    List<Bar> bars = new ArrayList<>();
    List<FrameSupport> supports = new ArrayList<>();
    FrameNode[][] before = null;
    for (int i = 0; i < stations; i++) {
      FrameNode[][] here = nodes(i);
      station(i, here, beams);
      if (before != null) {
        between(i, before, here, beams, bars);
      }
      for (FrameNode[] side : here) {
        supports.addAll(
            FrameSupport.held(side[0], Freedom.ALONG_X, Freedom.ALONG_Y, Freedom.ABOUT_Z));
        supports.add(FrameSupport.contact(side[0], Freedom.ALONG_Z));
      }
      before = here;
    }
    return new FrameModel(beams, bars, List.of(), supports);
  }

  private static FrameNode[][] nodes(int station) {
    FrameNode[][] nodes = new FrameNode[2][LEVELS];
    for (int level = 0; level < LEVELS; level++) {
      nodes[0][level] = node("front", station, level, 300 * level);
      nodes[1][level] = node("rear", station, level, -1500);
    }
    return nodes;
  }

  private static FrameNode node(String side, int station, int level, double y) {
    return new FrameNode(
        side + " " + station + " " + level, new Vector3(600 * station, y, 800 * level));
  }

  private static void station(int number, FrameNode[][] nodes, List<Beam> beams) {
    Vector3 forward = new Vector3(0, 1, 0);
    Vector3 up = new Vector3(0, 0, 1);
    Vector3 lap = new Vector3(45, 0, 0);
    for (int level = 0; level < LEVELS; level++) {
      String name = " " + number + " " + level;
      if (level + 1 < LEVELS) {
        beams.add(rigid("stud" + name, nodes[0][level], nodes[0][level + 1], forward, STUD));
        beams.add(rigid("post" + name, nodes[1][level], nodes[1][level + 1], forward, POST));
      }
      beams.add(
          pinned(
              "tie" + name,
              new Attachment(nodes[0][level], lap),
              new Attachment(nodes[1][level], lap),
              up));
    }
    beams.add(
        pinned("brace " + number, Attachment.at(nodes[0][4]), Attachment.at(nodes[1][3]), up));
  }

  private static void between(
      int number, FrameNode[][] before, FrameNode[][] here, List<Beam> beams, List<Bar> bars) {
    Vector3 up = new Vector3(0, 0, 1);
    for (int level = 1; level < LEVELS; level++) {
      beams.add(
          pinned(
              "rail " + number + " " + level,
              Attachment.at(before[1][level]),
              Attachment.at(here[1][level]),
              up));
    }
    beams.add(pinned("top " + number, Attachment.at(before[0][4]), Attachment.at(here[0][4]), up));
    bars.add(Bar.tie("cross " + number, before[1][0], here[1][4], 1e6));
    bars.add(Bar.tie("back " + number, here[1][0], before[1][4], 1e6));
    bars.add(
        new Bar(
            "face " + number,
            Attachment.at(before[0][0]),
            Attachment.at(here[0][4]),
            1e6,
            Acting.BOTH_WAYS));
  }

  private static Beam rigid(
      String name, FrameNode start, FrameNode end, Vector3 reference, BeamSection section) {
    return new Beam(name, BeamEnd.rigid(start), BeamEnd.rigid(end), reference, section);
  }

  private static Beam pinned(String name, Attachment start, Attachment end, Vector3 reference) {
    Set<Freedom> bending = Set.of(Freedom.ABOUT_Y, Freedom.ABOUT_Z);
    return new Beam(name, new BeamEnd(start, bending), new BeamEnd(end, bending), reference, POST);
  }

  private static List<LoadCase> cases(FrameModel model) {
    List<Beam> studs =
        model.beams().stream().filter(beam -> beam.name().startsWith("stud")).toList();
    List<LoadCase> cases = new ArrayList<>();
    for (int i = 0; i < CASES; i++) {
      List<FrameLoad> loads = new ArrayList<>();
      model
          .beams()
          .forEach(beam -> loads.add(new FrameLoad.Spread(beam.name(), new Vector3(0, 0, -0.3))));
      loads.add(
          new FrameLoad.OnBeam(
              studs.get(i % studs.size()).name(),
              37 * i % 800,
              new Vector3(300 * (i % 3 - 1), 300, -1600),
              new Vector3(160_000, 0, 0)));
      cases.add(new LoadCase("climber " + i, loads));
    }
    return cases;
  }

  /** Every case, with the greatest moment of each beam and all reactions. */
  @Benchmark
  public double forces() {
    double greatest = 0;
    for (FrameOutcome outcome : FrameAnalysis.of(model).firstOrder(cases)) {
      FrameSolution solution = (FrameSolution) outcome;
      for (Beam beam : model.beams()) {
        double moment =
            solution.forces(beam.name()).greatest(SectionForces::momentZ).forces().momentZ();
        greatest = Math.max(greatest, Math.abs(moment));
      }
      greatest = Math.max(greatest, solution.reactions().size());
    }
    return greatest;
  }

  /** When it buckles in the first case, with beams in four pieces. */
  @Benchmark
  public double critical() {
    FrameSolution solution = (FrameSolution) FrameAnalysis.of(model, 4).firstOrder(cases.get(0));
    return solution.criticalLoad().map(CriticalLoad::factor).orElse(0.0);
  }

  /** The first case in second order, with beams in four pieces. */
  @Benchmark
  public FrameOutcome secondOrder() {
    return FrameAnalysis.of(model, 4).secondOrder(cases.get(0));
  }
}
