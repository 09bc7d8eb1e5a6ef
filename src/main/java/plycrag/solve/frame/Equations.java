package plycrag.solve.frame;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plycrag.solve.sparse.Seating;
import plycrag.solve.sparse.SparsePattern;

/** A frame in numbers: its freedoms, its elements, and what holds it. */
final class Equations {
  private final FrameModel model;
  private final List<FrameNode> nodes;
  private final Map<FrameNode, Integer> numbers = new LinkedHashMap<>();
  private final List<Element> elements = new ArrayList<>();
  private final Map<String, List<Integer>> named = new LinkedHashMap<>();
  private final List<OneWay> oneWays = new ArrayList<>();
  private final boolean[] held;
  private final SparsePattern pattern;
  private final List<double[]> stiffness;
  private final List<double[]> stress;

  /** Of a model whose beams are each cut into so many pieces. */
  Equations(FrameModel model, int pieces) {
    if (pieces < 1) {
      throw new IllegalArgumentException("a beam has at least one piece: " + pieces);
    }
    this.model = model;
    this.nodes = model.nodes();
    nodes.forEach(node -> numbers.put(node, numbers.size()));
    FreedomCount count = new FreedomCount(nodes.size());
    model.beams().forEach(beam -> addBeam(beam, pieces, count));
    LinkMaker maker = new LinkMaker(numbers);
    model.bars().forEach(bar -> addLink(bar.name(), maker.bar(bar), bar.acting()));
    model.panels().forEach(one -> addLink(one.name(), maker.panel(one), Acting.BOTH_WAYS));
    this.held = new boolean[count.freedoms()];
    model.supports().forEach(support -> hold(support, maker));
    List<int[]> together = elements.stream().map(Element::freedoms).toList();
    this.pattern =
        new SparsePattern(Seating.of(count.blockOf(), count.blocks(), together), together);
    this.stiffness = elements.stream().map(Element::stiffness).toList();
    this.stress = elements.stream().map(Element::stressStiffness).toList();
  }

  private void addBeam(Beam beam, int pieces, FreedomCount count) {
    double step = beam.length() / pieces;
    LocalAxes axes = beam.axes();
    PieceEnd start = PieceEnd.at(beam.start(), number(beam.start().at().node()), axes, count);
    for (int i = 0; i < pieces; i++) {
      PieceEnd end =
          i == pieces - 1
              ? PieceEnd.at(beam.end(), number(beam.end().at().node()), axes, count)
              : PieceEnd.inside(count);
      add(beam.name(), new BeamPiece(beam, i * step, step, start, end));
      start = end;
    }
  }

  private void add(String name, Element element) {
    named.computeIfAbsent(name, one -> new ArrayList<>()).add(elements.size());
    elements.add(element);
  }

  private void addLink(String name, Link link, Acting acting) {
    if (acting != Acting.BOTH_WAYS) {
      oneWays.add(new OneWay(name, acting.sign(), elements.size(), -1));
    }
    add(name, link);
  }

  private void hold(FrameSupport support, LinkMaker maker) {
    int freedom = freedom(support);
    if (!support.isRigid()) {
      addLink(support.name(), maker.spring(support), support.acting());
    } else if (support.acting() == Acting.BOTH_WAYS) {
      held[freedom] = true;
    } else {
      oneWays.add(new OneWay(support.name(), support.acting().sign(), -1, freedom));
    }
  }

  int freedom(FrameSupport support) {
    return FreedomCount.of(number(support.node()), support.freedom());
  }

  /** The freedom that a settlement moves, which a rigid support must hold. */
  int rigid(FrameLoad.Settlement settlement) {
    int freedom = FreedomCount.of(number(settlement.node()), settlement.freedom());
    if (!held[freedom] && oneWays.stream().noneMatch(one -> one.freedom() == freedom)) {
      throw new IllegalArgumentException("no rigid support moves it: " + settlement);
    }
    return freedom;
  }

  /** The number of a node, which must be one of the frame. */
  int number(FrameNode node) {
    Integer number = numbers.get(node);
    if (number == null) {
      throw new IllegalArgumentException("no node of the frame: " + node);
    }
    return number;
  }

  List<FrameNode> nodes() {
    return nodes;
  }

  int freedoms() {
    return held.length;
  }

  List<Element> elements() {
    return elements;
  }

  /** The numbers of the elements of a member, which must be one of the frame, in order along it. */
  List<Integer> of(String member) {
    List<Integer> its = named.get(member);
    if (its == null) {
      throw new IllegalArgumentException("no member of the frame: " + member);
    }
    return its;
  }

  /** A piece of a beam by its number. */
  BeamPiece piece(int number) {
    if (elements.get(number) instanceof BeamPiece piece) {
      return piece;
    }
    throw new IllegalArgumentException("a bar or a sheet, and no beam");
  }

  /** The link of a bar, a sheet or a spring. */
  Link link(String member) {
    if (elements.get(of(member).get(0)) instanceof Link link) {
      return link;
    }
    throw new IllegalArgumentException("a beam, and no bar or sheet: " + member);
  }

  List<FrameSupport> supports() {
    return model.supports();
  }

  /** Those nodes that supports hold, in the order of nodes. */
  List<FrameNode> supportedNodes() {
    Set<FrameNode> its =
        model.supports().stream().map(FrameSupport::node).collect(Collectors.toSet());
    return nodes.stream().filter(its::contains).toList();
  }

  /** The stiffness of a sheet, N/mm. */
  double panelStiffness(String panel) {
    return model.panels().stream()
        .filter(one -> one.name().equals(panel))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no sheet of the frame: " + panel))
        .stiffness();
  }

  List<OneWay> oneWays() {
    return oneWays;
  }

  SparsePattern pattern() {
    return pattern;
  }

  /** What is held rigidly while some one-way parts are slack. */
  boolean[] held(BitSet slack) {
    boolean[] all = held.clone();
    for (int i = 0; i < oneWays.size(); i++) {
      if (oneWays.get(i).isRigid() && !slack.get(i)) {
        all[oneWays.get(i).freedom()] = true;
      }
    }
    return all;
  }

  /** The stiffness of all elements that are not slack, as entries. */
  double[] entries(BitSet slack) {
    BitSet out = slackElements(slack);
    double[] entries = new double[pattern.entries()];
    for (int i = 0; i < elements.size(); i++) {
      if (!out.get(i)) {
        pattern.add(entries, i, stiffness.get(i), 1);
      }
    }
    return entries;
  }

  /** What tensions of elements add to it. */
  double[] stressEntries(double[] tensions) {
    double[] entries = new double[pattern.entries()];
    for (int i = 0; i < tensions.length; i++) {
      if (tensions[i] != 0) {
        pattern.add(entries, i, stress.get(i), tensions[i]);
      }
    }
    return entries;
  }

  private BitSet slackElements(BitSet slack) {
    BitSet out = new BitSet();
    slack.stream()
        .map(i -> oneWays.get(i).element())
        .filter(element -> element >= 0)
        .forEach(out::set);
    return out;
  }

  /** The tension of each element under motions, N. */
  double[] tensions(double[] motions, BitSet slack) {
    BitSet out = slackElements(slack);
    return IntStream.range(0, elements.size())
        .mapToDouble(i -> out.get(i) ? 0 : elements.get(i).axial(motions))
        .toArray();
  }
}
