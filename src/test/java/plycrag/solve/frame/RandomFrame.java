package plycrag.solve.frame;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import plycrag.geometry.Vector3;

/**
 * A frame at random that stands: a chain of beams from a fixed node, more beams and bars between
 * its nodes, some of them released and on arms, under loads of every kind.
 */
final class RandomFrame {
  private final Random random;
  private final UnaryOperator<Vector3> turn;
  private final int hand;
  private final List<FrameNode> nodes = new ArrayList<>();
  private final List<Beam> beams = new ArrayList<>();
  private final List<Bar> bars = new ArrayList<>();
  private final List<FrameSupport> supports = new ArrayList<>();
  private final List<FrameLoad> loads = new ArrayList<>();

  /** Turned or mirrored as a whole; a mirror turns moments round. */
  RandomFrame(long seed, UnaryOperator<Vector3> turn, boolean mirror) {
    this.random = new Random(seed);
    this.turn = turn;
    this.hand = mirror ? -1 : 1;
    int count = 3 + random.nextInt(5);
    for (int i = 0; i < count; i++) {
      nodes.add(new FrameNode("n" + i, turn.apply(vector(3000).plus(new Vector3(0, 0, 1500 * i)))));
      if (i > 0) {
        beam(i - 1, i, Set.of());
      }
    }
    supports.addAll(FrameSupport.fixed(nodes.get(0)));
    if (count > 4) {
      supports.addAll(FrameSupport.fixed(nodes.get(2)));
    }
    for (int i = 0; i < 4; i++) {
      int one = random.nextInt(count);
      int other = (one + 1 + random.nextInt(count - 1)) % count;
      if (random.nextBoolean()) {
        beam(one, other, released());
      } else {
        bars.add(
            new Bar(
                "bar " + i,
                attached(one),
                attached(other),
                1e6 + 1e7 * random.nextDouble(),
                Acting.BOTH_WAYS));
      }
    }
    for (int i = 0; i < 5; i++) {
      load();
    }
  }

  private Vector3 vector(double size) {
    return new Vector3(
        size * (random.nextDouble() - 0.5),
        size * (random.nextDouble() - 0.5),
        size * (random.nextDouble() - 0.5));
  }

  private Vector3 turnedVector(double size) {
    return turn.apply(vector(size));
  }

  private Attachment attached(int node) {
    return new Attachment(
        nodes.get(node), random.nextInt(3) == 0 ? turnedVector(200) : vectorNone());
  }

  private static Vector3 vectorNone() {
    return new Vector3(0, 0, 0);
  }

  private Set<Freedom> released() {
    Set<Freedom> released = EnumSet.noneOf(Freedom.class);
    for (Freedom one :
        List.of(Freedom.ALONG_X, Freedom.ABOUT_X, Freedom.ABOUT_Y, Freedom.ABOUT_Z)) {
      if (random.nextInt(3) == 0) {
        released.add(one);
      }
    }
    return released;
  }

  private void beam(int start, int end, Set<Freedom> released) {
    double broad = 40 + 60 * random.nextDouble();
    BeamSection section = BeamSection.rectangle(broad, 45, 11_000, 690);
    beams.add(
        new Beam(
            "beam " + beams.size(),
            new BeamEnd(attached(start), released),
            BeamEnd.rigid(attached(end)),
            turnedVector(1),
            random.nextBoolean() ? section : section.shearing(5.0 / 6)));
  }

  private void load() {
    Beam beam = beams.get(random.nextInt(beams.size()));
    double at = beam.length() * random.nextDouble();
    FrameNode node = nodes.get(random.nextInt(nodes.size()));
    loads.add(
        switch (random.nextInt(3)) {
          case 0 -> new FrameLoad.Spread(beam.name(), turnedVector(2));
          case 1 ->
              new FrameLoad.OnBeam(
                  beam.name(), at, turnedVector(3000), turnedVector(1e5).times(hand));
          default -> new FrameLoad.OnNode(node, turnedVector(3000), turnedVector(1e6).times(hand));
        });
  }

  List<FrameNode> nodes() {
    return nodes;
  }

  List<FrameLoad> loads() {
    return loads;
  }

  LoadCase loadCase() {
    return new LoadCase("random", loads);
  }

  FrameModel model() {
    return new FrameModel(beams, bars, List.of(), supports);
  }

  private Beam named(String name) {
    return beams.stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
  }

  private Vector3 place(String beam, double at) {
    Beam its = named(beam);
    return its.start().at().place().plus(its.axes().x().times(at));
  }

  Vector3 force(FrameLoad load) {
    if (load instanceof FrameLoad.Spread one) {
      return one.force().times(named(one.beam()).length());
    }
    return load instanceof FrameLoad.OnBeam one ? one.force() : ((FrameLoad.OnNode) load).force();
  }

  /** About the origin. */
  Vector3 moment(FrameLoad load) {
    if (load instanceof FrameLoad.Spread one) {
      return place(one.beam(), named(one.beam()).length() / 2).cross(force(load));
    }
    if (load instanceof FrameLoad.OnBeam one) {
      return place(one.beam(), one.at()).cross(one.force()).plus(one.moment());
    }
    FrameLoad.OnNode one = (FrameLoad.OnNode) load;
    return one.node().place().cross(one.force()).plus(one.moment());
  }
}
