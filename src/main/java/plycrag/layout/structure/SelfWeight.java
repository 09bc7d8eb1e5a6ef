package plycrag.layout.structure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plycrag.geometry.Vector3;
import plycrag.geometry.Volume;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.standing.Mass;
import plycrag.solve.frame.FrameLoad;

/**
 * The weight of a wall along its members: timber where it is; sheets, and holds where they count,
 * on the uprights of their facet, each as much as reaches half way to the next. Hardware is a part
 * of the timber's and the sheets' weight.
 */
public final class SelfWeight {
  /** Standard gravity, m/s². */
  public static final double GRAVITY = 9.80665;

  /** What hardware adds to timber and sheets, a part of them (assumption). */
  public static final double HARDWARE = 0.05;

  private static final double CUBIC_METRE = 1e9;
  private static final double SQUARE_METRE = 1e6;

  private final Layout layout;
  private final StructureModel model;

  /** Of a layout as a frame. */
  public SelfWeight(Layout layout, StructureModel model) {
    this.layout = layout;
    this.model = model;
  }

  /** Timber, sheets and hardware. */
  public List<FrameLoad> loads() {
    double density = layout.wall().room().handling().timberDensity();
    List<FrameLoad> loads = new ArrayList<>();
    for (MemberLine member : model.members()) {
      double kilograms = Volume.of(member.axis().body()).volume() * density / CUBIC_METRE;
      spread(member, kilograms * (1 + HARDWARE), loads);
    }
    for (FacetLayout facet : layout.facets()) {
      double sheets = Mass.ofSheets(layout.wall(), facet).kilograms();
      onUprights(facet, sheets * (1 + HARDWARE), loads);
    }
    return loads;
  }

  /**
   * Holds.
   *
   * @param mass on each square metre of the face, kg
   */
  public List<FrameLoad> holds(double mass) {
    List<FrameLoad> loads = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      onUprights(facet, area(facet) * mass / SQUARE_METRE, loads);
    }
    return loads;
  }

  /** All of it, with holds so heavy, kg. */
  public double kilograms(double holds) {
    double timberAndSheets = Mass.of(layout).kilograms() * (1 + HARDWARE);
    return timberAndSheets
        + layout.facets().stream().mapToDouble(SelfWeight::area).sum() * holds / SQUARE_METRE;
  }

  private static double area(FacetLayout facet) {
    return facet.pieces().stream().mapToDouble(piece -> piece.outline().getArea()).sum();
  }

  private void onUprights(FacetLayout facet, double kilograms, List<FrameLoad> loads) {
    List<MemberLine> uprights =
        model.members().stream()
            .filter(one -> one.axis().facet().equals(facet.facet().name()))
            .filter(one -> one.axis().role().isUpright() && one.isHeld())
            .sorted(Comparator.comparingDouble(one -> across(facet, one)))
            .toList();
    List<Double> parts = new ArrayList<>();
    for (int i = 0; i < uprights.size(); i++) {
      double here = across(facet, uprights.get(i));
      double left = i == 0 ? 0 : (across(facet, uprights.get(i - 1)) + here) / 2;
      double right =
          i + 1 == uprights.size()
              ? facet.facet().width()
              : (across(facet, uprights.get(i + 1)) + here) / 2;
      MemberLine one = uprights.get(i);
      parts.add(Math.max(0, right - left) * (one.to() - one.from()));
    }
    double all = parts.stream().mapToDouble(Double::doubleValue).sum();
    for (int i = 0; i < uprights.size() && all > 0; i++) {
      spread(uprights.get(i), kilograms * parts.get(i) / all, loads);
    }
  }

  private static double across(FacetLayout facet, MemberLine upright) {
    return facet.facet().plane().fromRoom(upright.axis().at(0)).x();
  }

  private static void spread(MemberLine member, double kilograms, List<FrameLoad> loads) {
    if (member.isHeld() && kilograms > 0) {
      double line = kilograms * GRAVITY / (member.to() - member.from());
      for (MemberLine.Piece piece : member.pieces()) {
        loads.add(new FrameLoad.Spread(piece.beam(), new Vector3(0, 0, -line)));
      }
    }
  }
}
