package plycrag.layout;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.layout.frame.Member;
import plycrag.layout.joints.Fixings;
import plycrag.layout.joints.Hardware;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.Screw;
import plycrag.layout.screws.ScrewPoint;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.sheets.OffcutParts;
import plycrag.layout.sheets.WorkedFace;
import plycrag.layout.support.PlacedMember;
import plycrag.layout.support.Tether;
import plycrag.layout.support.WallSupport;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/**
 * A wall with everything in its place.
 *
 * @param wall what is to be built
 * @param facets from the floor up
 * @param support what holds them up, if it is told
 * @param sheets in the order of their marks
 * @param faces of the sheets that a machine works on, sheet by sheet in the order of the work
 * @param offcuts what is cut from that which the sheets leave over
 * @param fixings what holds each joint
 * @param hardware every piece of it in its place: joint by joint, then gussets, anchors and tethers
 */
public record Layout(
    Wall wall,
    List<FacetLayout> facets,
    Optional<WallSupport> support,
    List<LaidSheet> sheets,
    List<WorkedFace> faces,
    OffcutParts offcuts,
    Fixings fixings,
    List<Hardware> hardware) {
  /** Copies the lists. */
  public Layout {
    facets = List.copyOf(facets);
    sheets = List.copyOf(sheets);
    faces = List.copyOf(faces);
    hardware = List.copyOf(hardware);
  }

  /** The facets, those that stand on each other together, from left to right. */
  public List<List<FacetLayout>> runs() {
    return Facet.runs(facets, FacetLayout::facet);
  }

  /**
   * The facet of a name.
   *
   * @throws java.util.NoSuchElementException if none has it
   */
  public FacetLayout facet(String name) {
    return facets.stream().filter(one -> one.facet().name().equals(name)).findFirst().orElseThrow();
  }

  /** All members, facet by facet, those of the support last. */
  public List<Member> members() {
    return Stream.concat(
            facets.stream().flatMap(facet -> facet.members().stream()),
            standing().stream().map(PlacedMember::member))
        .toList();
  }

  /** The section of the timber that each of them is cut from. */
  public MemberSections sections() {
    return new MemberSections(this);
  }

  /** All joints, facet by facet, those of the support last. */
  public List<Joint> joints() {
    return Stream.concat(
            facets.stream().flatMap(facet -> facet.joints().stream()),
            support.stream().flatMap(one -> one.joints().stream()))
        .toList();
  }

  /** The members of the support; none of a frame alone. */
  public List<PlacedMember> standing() {
    return support.map(WallSupport::members).orElse(List.of());
  }

  /**
   * Where a tether holds the uppermost facet, in the room.
   *
   * @param angle of the facet that is hinged, degrees
   */
  public Vector3 held(Tether tether, double angle) {
    List<Facet> run = runs().get(0).stream().map(FacetLayout::facet).toList();
    return tether.held(wall, run, angle);
  }

  /** All inserts, facet by facet. */
  public List<Insert> inserts() {
    return facets.stream().flatMap(facet -> facet.inserts().stream()).toList();
  }

  /** All places where holds may be screwed on, facet by facet. */
  public List<ScrewPoint> screwPoints() {
    return facets.stream().flatMap(facet -> facet.screwPoints().stream()).toList();
  }

  /** All screws through sheets, facet by facet. */
  public List<Screw> screws() {
    return facets.stream().flatMap(facet -> facet.screws().stream()).toList();
  }

  /** The diameters of all holes that a drill could make, mm. */
  public List<Double> bores() {
    return holes().stream()
        .filter(hole -> !hole.isSunk())
        .map(hole -> hole.bore().diameter())
        .distinct()
        .toList();
  }

  /** All holes that a machine makes, face by face: those of the sheets, and those for pins. */
  public List<MachinedHole> machined() {
    return faces.stream().flatMap(face -> face.sheet().holes().stream()).toList();
  }

  /** All holes of the sheets, sheet by sheet. */
  public List<MachinedHole> holes() {
    return sheets.stream().flatMap(sheet -> sheet.holes().stream()).toList();
  }
}
