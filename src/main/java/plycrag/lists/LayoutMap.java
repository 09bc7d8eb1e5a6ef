package plycrag.lists;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.FeatureMap;
import plycrag.document.FeatureMap.Feature;
import plycrag.geometry.Shapes;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.Screw;
import plycrag.layout.screws.FastenerLine;
import plycrag.layout.screws.ScrewPoint;
import plycrag.layout.skin.Piece;
import plycrag.wall.Cutout;
import plycrag.wall.Facet;
import plycrag.wall.Inserts;
import plycrag.wall.Zone;

/** The layout as geometries in (u, v), for other programs. */
public final class LayoutMap {
  private final CheckedLayout checked;
  private final List<Feature> features = new ArrayList<>();

  private LayoutMap(CheckedLayout checked) {
    this.checked = checked;
  }

  /**
   * Every facet with its cutouts, pieces, members, fastener lines, screws, inserts, screw points
   * and zones.
   */
  public static FeatureMap of(CheckedLayout checked) {
    LayoutMap map = new LayoutMap(checked);
    checked.layout().facets().forEach(map::add);
    return new FeatureMap(map.features);
  }

  private void add(FacetLayout layout) {
    String facet = layout.facet().name();
    Inserts insert = checked.layout().wall().inserts();
    add(layout.facet().outline(), properties(facet, facet, "facet"));
    for (Polygon area : layout.facet().setback(insert.setback())) {
      add(area, properties(facet, facet, "setback"));
    }
    for (Cutout cutout : layout.facet().cutouts()) {
      add(cutout.shape(), properties(facet, cutout.name(), "cutout"));
    }
    for (Piece piece : layout.pieces()) {
      add(piece.outline(), properties(facet, piece.mark(), "piece"));
    }
    layout.members().forEach(member -> add(layout.facet(), member));
    layout.fastenerLines().forEach(line -> add(facet, line));
    layout.inserts().forEach(one -> add(facet, one, insert));
    layout.screwPoints().forEach(point -> add(facet, point));
    for (Zone zone : checked.layout().wall().zones(layout.facet())) {
      add(zone.shape(), properties(facet, zone.name(), "zone"));
    }
  }

  private void add(String facet, ScrewPoint point) {
    Map<String, Cell> properties = properties(facet, point.mark(), "screw-point");
    point.member().ifPresent(member -> properties.put("member", Cell.of(member)));
    add(point.centre(), properties);
  }

  /** A member where it touches the back of the sheets; none of one that lies below them. */
  private void add(Facet facet, Member member) {
    Geometry touching = Shapes.shared(member.footprint(), facet.outline());
    if (touching.getArea() > 0) {
      Map<String, Cell> properties = properties(facet.name(), member.mark(), "member");
      properties.put("role", Cell.of(member.role().word()));
      add(touching, properties);
    }
  }

  private void add(String facet, FastenerLine line) {
    Map<String, Cell> properties =
        properties(facet, line.piece() + " " + line.member(), "fastener-line");
    properties.put("piece", Cell.of(line.piece()));
    properties.put("member", Cell.of(line.member()));
    add(line.line(), properties);
    for (Screw screw : line.screws()) {
      Map<String, Cell> ofScrew = properties(facet, screw.mark(), "screw");
      ofScrew.put("member", Cell.of(screw.member()));
      add(screw.centre(), ofScrew);
    }
  }

  private void add(String facet, Insert insert, Inserts parameters) {
    Map<String, Cell> properties = properties(facet, insert.mark(), "insert");
    properties.put("hole_mm", Cell.mm(parameters.body().hole()));
    properties.put("flange_mm", Cell.mm(parameters.body().flange()));
    add(insert.centre(), properties);
  }

  private void add(Geometry geometry, Map<String, Cell> properties) {
    features.add(new Feature(geometry, properties));
  }

  private static Map<String, Cell> properties(String facet, String mark, String kind) {
    Map<String, Cell> properties = new LinkedHashMap<>();
    properties.put("facet", Cell.of(facet));
    properties.put("mark", Cell.of(mark));
    properties.put("kind", Cell.of(kind));
    return properties;
  }
}
