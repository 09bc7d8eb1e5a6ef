package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Point;
import plycrag.check.CheckedLayout;
import plycrag.document.Scene;
import plycrag.document.Scene.Kind;
import plycrag.document.Scene.Spot;
import plycrag.document.Xyz;
import plycrag.drawing.pen.TitleLines;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Surface;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.joints.Hardware;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.Screw;
import plycrag.layout.skin.Piece;
import plycrag.layout.support.PlacedMember;

/**
 * The whole wall in space, for other programs: every part as it is built, bevels and openings in
 * it, but no bored holes; a hinged wall at the angle that it is laid out at.
 *
 * <p>Inserts, screws through sheets and what holds a hinged wall have a place alone, and so have
 * the screws of brackets, straps, hinges and gussets; anchors have a body as far as they are in
 * timber. Strips of cover have none.
 */
public final class WallModel {
  private final Layout layout;
  private final Set<String> names = new HashSet<>();
  private final List<Scene.Node> nodes = new ArrayList<>();

  private WallModel(Layout layout) {
    this.layout = layout;
  }

  /** The parts by their marks; the title of a refused wall says that it is not for making. */
  public static Scene of(CheckedLayout checked) {
    WallModel model = new WallModel(checked.layout());
    model.addFacets();
    model.addSupport();
    model.addSurroundings();
    String name = checked.layout().wall().name();
    String title = checked.isApproved() ? name : name + ", " + TitleLines.STAMP;
    return new Scene(title, model.nodes);
  }

  private void addFacets() {
    layout.facets().forEach(this::addSheets);
    layout.facets().forEach(this::addFrame);
    layout.facets().forEach(this::addHoles);
  }

  private void addSheets(FacetLayout facet) {
    double thickness = layout.wall().sheet().thickness();
    for (Piece piece : facet.pieces()) {
      Surface surface = Surface.between(piece.outline(), 0, piece.back(), thickness);
      add(piece.mark(), Kind.PIECE, facet, body(surface, facet));
    }
  }

  private void addFrame(FacetLayout facet) {
    double thickness = layout.wall().sheet().thickness();
    for (Member member : facet.members()) {
      Surface surface = Surface.of(member.body(thickness));
      add(member.mark(), Kind.MEMBER, facet, body(surface, facet));
    }
  }

  private static Scene.Form body(Surface onFacet, FacetLayout facet) {
    return SceneBody.of(onFacet.mapped(facet.facet().plane()::toRoom));
  }

  private void addHoles(FacetLayout facet) {
    for (Insert insert : facet.inserts()) {
      add(insert.mark(), Kind.INSERT, facet, spot(insert.centre(), facet));
    }
    for (Screw screw : facet.screws()) {
      add(screw.mark(), Kind.SCREW, facet, spot(screw.centre(), facet));
    }
  }

  /** A place on the front face, facing out of it, upward as the slope goes. */
  private static Spot spot(Point centre, FacetLayout facet) {
    FacetPlane plane = facet.facet().plane();
    Vector3 at = plane.toRoom(new Vector3(centre.getX(), centre.getY(), 0));
    Vector3 origin = plane.toRoom(new Vector3(0, 0, 0));
    Vector3 right = plane.toRoom(new Vector3(1, 0, 0)).minus(origin);
    Vector3 up = plane.toRoom(new Vector3(0, 1, 0)).minus(origin);
    return new Spot(SceneBody.place(at), way(right), way(up));
  }

  private static Xyz way(Vector3 way) {
    return new Xyz(way.x(), way.y(), way.z());
  }

  private void addSupport() {
    for (PlacedMember placed : layout.standing()) {
      Scene.Form body = SceneBody.of(Surface.of(placed.body()));
      add(placed.member().mark(), Kind.SUPPORT, Optional.empty(), body);
    }
    layout.hardware().forEach(this::addHardware);
  }

  private void addHardware(Hardware piece) {
    Scene.Form form =
        piece
            .form()
            .surface()
            .<Scene.Form>map(SceneBody::of)
            .orElseGet(() -> Spot.plain(SceneBody.place(piece.place())));
    add(piece.mark(), Kind.HARDWARE, Optional.empty(), form);
  }

  private void addSurroundings() {
    ModelSurroundings surroundings = new ModelSurroundings(layout);
    int mats = 0;
    for (Surface mat : surroundings.mats()) {
      mats++;
      add("mat " + mats, Kind.MAT, Optional.empty(), SceneBody.of(mat));
    }
    for (ModelSurroundings.Named part : surroundings.room()) {
      add(part.name(), Kind.ROOM, Optional.empty(), SceneBody.of(part.surface()));
    }
  }

  private void add(String mark, Kind kind, FacetLayout facet, Scene.Form form) {
    add(mark, kind, Optional.of(facet.facet().name()), form);
  }

  /** Marks come first; what the user named like one of them has a number behind it. */
  private void add(String mark, Kind kind, Optional<String> facet, Scene.Form form) {
    String name = mark;
    for (int number = 2; !names.add(name); number++) {
      name = mark + " (" + number + ")";
    }
    nodes.add(new Scene.Node(name, kind, facet, form));
  }
}
