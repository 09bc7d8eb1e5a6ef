package plycrag.layout.structure;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.frame.Joint;
import plycrag.layout.joints.Fixings;
import plycrag.layout.joints.Gusset;
import plycrag.solve.fixing.LapScrews;
import plycrag.solve.fixing.SteelChoice;
import plycrag.solve.fixing.SteelPlace;
import plycrag.solve.fixing.ThroughLine;
import plycrag.solve.frame.Attachment;
import plycrag.solve.frame.Beam;
import plycrag.solve.frame.BeamEnd;
import plycrag.solve.frame.BeamSection;
import plycrag.solve.frame.Freedom;
import plycrag.solve.timber.FastenerSlip;
import plycrag.wall.JointFasteners;

/**
 * Connects members at their joints. An end on a side starts at the end itself, on a rigid arm from
 * the other's line; where an end has several joints, and where members lie side by side, short
 * beams lead from line to line: stiff, but for what screws and bolts give across themselves.
 */
final class JointLinks {
  private static final Set<Freedom> ALL_TURNS =
      EnumSet.of(Freedom.ABOUT_X, Freedom.ABOUT_Y, Freedom.ABOUT_Z);

  /** The side of what leads from line to line, mm, and how much stiffer than timber it is. */
  private static final double SIDE = 60;

  private static final double STIFFER = 5;

  /** What is shorter would be so stiff that nothing else could be told from noise, mm. */
  private static final double SHORTEST = 20;

  private static final Vector3 ASIDE = new Vector3(2 * SHORTEST, 0, 0);

  private final Map<String, AxisStations> members;
  private final Fixings fixings;
  private final JointFasteners fasteners;
  private final FrameVariant variant;
  private final ElasticTimber timber;
  private final BeamSection stiff;
  private final List<Beam> links = new ArrayList<>();
  private final Map<MemberEnd, List<Joint>> endings = new LinkedHashMap<>();
  private final Map<MemberEnd, BeamEnd> ends = new LinkedHashMap<>();
  private final Map<MemberEnd, Joint> starting = new LinkedHashMap<>();
  private final List<JointPath> paths = new ArrayList<>();

  /**
   * An end of a member.
   *
   * @param mark whose
   * @param last whether it is where its line ends, not where it starts
   */
  record MemberEnd(String mark, boolean last) {}

  JointLinks(
      Map<String, AxisStations> members,
      Fixings fixings,
      JointFasteners fasteners,
      FrameVariant variant,
      ElasticTimber timber) {
    this.members = members;
    this.fasteners = fasteners;
    this.timber = timber;
    this.fixings = fixings;
    this.variant = variant;
    this.stiff =
        BeamSection.rectangle(
            SIDE, SIDE, STIFFER * timber.elasticity(), STIFFER * timber.shearModulus());
  }

  /** First all that lies along members, then their ends. */
  void connect(List<Joint> joints) {
    for (Joint joint : joints) {
      if (fixings.isUnheld(joint)) {
        continue;
      }
      switch (joint.kind()) {
        case END -> {
          if (liesAlong(joint)) {
            beside(joint, ends(joint), Set.of());
          } else {
            ending(joint);
          }
        }
        case SPLICE, STUD_SPLICE -> ending(joint);
        case SIDE, FOLD, FOLD_EDGES, HINGE ->
            beside(joint, places(joint), variant.jointsStiff() ? Set.of() : ALL_TURNS);
      }
    }
    endings.forEach(this::end);
  }

  private void ending(Joint joint) {
    members.get(joint.second()).near(endOf(joint));
    endings.computeIfAbsent(end(joint), unseen -> new ArrayList<>()).add(joint);
  }

  /** Whether the first lies along the second's side, as a heel does along a stud. */
  private boolean liesAlong(Joint joint) {
    MemberAxis first = members.get(joint.first()).axis();
    MemberAxis second = members.get(joint.second()).axis();
    return Math.abs(first.way().dot(second.way())) > PARALLEL_WAYS
        && second.distance(first.at(first.length() / 2)) > SHORTEST;
  }

  /** The cosine of the angle up to which two members run side by side. */
  private static final double PARALLEL_WAYS = 0.99;

  /** Where plywood or what else holds two such members ends along them, less a margin. */
  private List<Vector3> ends(Joint joint) {
    MemberAxis first = members.get(joint.first()).axis();
    double low = first.foot(nearest(joint)) - joint.length() / 2;
    double high = low + joint.length();
    for (Gusset gusset : fixings.gussetsOf(joint)) {
      low = Math.max(0, along(first, gusset).min().orElse(low));
      high = Math.min(first.length(), along(first, gusset).max().orElse(high));
    }
    double margin = (high - low) * MARGIN;
    return List.of(first.at(low + margin), first.at(high - margin));
  }

  /** How far from the ends of a gusset the middle of half of its screws is, a part of it. */
  private static final double MARGIN = 0.25;

  private static DoubleStream along(MemberAxis axis, Gusset gusset) {
    return Stream.concat(gusset.fit().body().near().stream(), gusset.fit().body().far().stream())
        .mapToDouble(corner -> corner.minus(axis.start()).dot(axis.way()));
  }

  private MemberEnd end(Joint joint) {
    MemberAxis first = members.get(joint.first()).axis();
    MemberAxis second = members.get(joint.second()).axis();
    boolean last = second.distance(first.end()) < second.distance(first.start());
    return new MemberEnd(joint.first(), last);
  }

  private Vector3 endOf(Joint joint) {
    return place(end(joint));
  }

  private Vector3 place(MemberEnd end) {
    MemberAxis axis = members.get(end.mark()).axis();
    return end.last() ? axis.end() : axis.start();
  }

  private double along(MemberEnd end) {
    return end.last() ? members.get(end.mark()).axis().length() : 0;
  }

  private void end(MemberEnd end, List<Joint> its) {
    AxisStations first = members.get(end.mark());
    Joint only = its.get(0);
    if (its.size() == 1 && first.find(along(end)).isEmpty()) {
      ends.put(end, direct(end, only));
      starting.put(end, only);
      return;
    }
    for (Joint joint : its) {
      Attachment from = first.near(along(end));
      Attachment to = members.get(joint.second()).near(place(end));
      link(joint, joint.mark(), from, to, turns(first.axis(), joint), first.axis().across());
    }
  }

  private BeamEnd direct(MemberEnd end, Joint joint) {
    MemberAxis axis = members.get(end.mark()).axis();
    Attachment on = members.get(joint.second()).near(place(end));
    Vector3 arm = place(end).minus(on.node().place());
    Set<Freedom> released = new TreeSet<>(turns(axis, joint));
    if (end.last() && isStrut(axis)) {
      released.add(Freedom.ABOUT_X);
    }
    return new BeamEnd(new Attachment(on.node(), arm), released);
  }

  /** Whether what holds both ends of a support's member passes no torsion through it either. */
  private boolean isStrut(MemberAxis axis) {
    return !variant.jointsStiff()
        && axis.facet().isEmpty()
        && endings.containsKey(new MemberEnd(axis.mark(), false));
  }

  /**
   * What an end does not pass on. That of a support: bending. In a frame bending about what is
   * square to both members, since what ends on a plate keeps it from rolling.
   */
  private Set<Freedom> turns(MemberAxis first, Joint joint) {
    if (variant.jointsStiff()) {
      return Set.of();
    }
    MemberAxis on = members.get(joint.second()).axis();
    if (first.facet().isEmpty() && (!on.isLevel() || on.runsStraight())) {
      return Set.of(Freedom.ABOUT_Y, Freedom.ABOUT_Z);
    }
    Vector3 second = on.way();
    double aboutY = Math.abs(second.dot(first.across()));
    double aboutZ = Math.abs(second.dot(first.way().cross(first.across())));
    if (!Tolerance.isSome(Math.max(aboutY, aboutZ))) {
      return Set.of(Freedom.ABOUT_Y, Freedom.ABOUT_Z);
    }
    return Set.of(aboutY > aboutZ ? Freedom.ABOUT_Z : Freedom.ABOUT_Y);
  }

  private void beside(Joint joint, List<Vector3> places, Set<Freedom> passes) {
    for (int i = 0; i < places.size(); i++) {
      Attachment from = members.get(joint.first()).near(places.get(i));
      Attachment to = members.get(joint.second()).near(places.get(i));
      link(
          joint,
          joint.mark() + "." + (i + 1),
          from,
          to,
          passes,
          members.get(joint.first()).axis().way());
    }
  }

  private void link(
      Joint joint,
      String name,
      Attachment from,
      Attachment to,
      Set<Freedom> released,
      Vector3 reference) {
    Vector3 way = to.place().minus(from.place());
    boolean isShort = way.length() < SHORTEST;
    Attachment end = isShort ? new Attachment(to.node(), to.arm().plus(ASIDE)) : to;
    Vector3 line = end.place().minus(from.place()).unit();
    Vector3 beside = Math.abs(line.dot(reference)) < PARALLEL ? reference : square(line);
    paths.add(
        new JointPath(
            joint, "joint " + name, false, from.place(), JointPath.BeamAxes.of(line, beside)));
    links.add(
        new Beam(
            "joint " + name,
            BeamEnd.rigid(from),
            new BeamEnd(end, released),
            beside,
            section(joint, end.place().minus(from.place()).length())));
  }

  /**
   * Stiff, but across itself what screws and bolts through both members give: as a cantilever so
   * long that gives by 3 E I/l³, half of the fasteners being at either end of the joint.
   */
  private BeamSection section(Joint joint, double length) {
    Optional<LapScrews> through = fixings.throughOf(joint);
    if (through.isEmpty() || through.get().lines().isEmpty()) {
      return stiff;
    }
    double each =
        joint.kind() == Joint.Kind.FOLD
            ? slip(fasteners.bolts().diameter())
            : slip(fasteners.screws().diameter());
    int count = through.get().lines().size();
    double gives = count > 1 ? each * count / 2 : each;
    double inertia = gives * length * length * length / (3 * stiff.elasticity());
    return BeamSection.bending(
        stiff.elasticity(),
        stiff.shearModulus(),
        stiff.area(),
        Math.min(inertia, stiff.inertiaY()),
        Math.min(inertia, stiff.inertiaZ()),
        stiff.torsion());
  }

  /** K_u of one fastener, N/mm. */
  private double slip(double diameter) {
    return FastenerSlip.ultimate(FastenerSlip.bolt(timber.density(), diameter).value());
  }

  private static final double PARALLEL = 0.9;

  private static Vector3 square(Vector3 way) {
    return Math.abs(way.x()) < PARALLEL ? new Vector3(1, 0, 0) : new Vector3(0, 0, 1);
  }

  /** The first and the last of what holds two members beside each other, in the room. */
  private List<Vector3> places(Joint joint) {
    List<Vector3> all =
        fixings
            .throughOf(joint)
            .map(LapScrews::lines)
            .filter(lines -> !lines.isEmpty())
            .map(lines -> lines.stream().map(JointLinks::middle).toList())
            .orElseGet(() -> steel(joint));
    return all.size() > 2 ? List.of(all.get(0), all.get(all.size() - 1)) : all;
  }

  private static Vector3 middle(ThroughLine line) {
    return line.from().plus(line.way().times(line.grip() / 2));
  }

  private List<Vector3> steel(Joint joint) {
    List<Vector3> places =
        fixings.steelOf(joint).map(SteelChoice::places).orElse(List.of()).stream()
            .map(SteelPlace::middle)
            .toList();
    return places.isEmpty() ? List.of(nearest(joint)) : places;
  }

  /** Where the lines of two members come nearest to each other, on the first. */
  private Vector3 nearest(Joint joint) {
    MemberAxis first = members.get(joint.first()).axis();
    MemberAxis second = members.get(joint.second()).axis();
    Vector3 place = second.at(second.length() / 2);
    for (int i = 0; i < STEPS; i++) {
      place = second.at(second.foot(first.at(first.foot(place))));
    }
    return first.at(first.foot(place));
  }

  private static final int STEPS = 50;

  /** What leads from line to line. */
  List<Beam> links() {
    return links;
  }

  /** The ways through the joints at which members start or end themselves. */
  Map<MemberEnd, Joint> starting() {
    return starting;
  }

  /** The ways that lead from line to line. */
  List<JointPath> paths() {
    return paths;
  }

  /** How an end is held that starts at its joint itself. */
  Optional<BeamEnd> held(MemberEnd end) {
    return Optional.ofNullable(ends.get(end));
  }
}
