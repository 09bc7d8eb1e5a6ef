package plycrag.lists;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.geometry.Direction;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.pattern.Screw;
import plycrag.layout.screws.FastenerLine;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.standing.SheetDatum;
import plycrag.solve.nest.Placement;
import plycrag.units.LengthUnit;
import plycrag.units.Tape;

/**
 * What to mark with a tape: on each part, lines to strike at a reading from one datum edge, and on
 * each line the running readings from the other, so that nobody adds in the head.
 */
public final class MarkingOut {
  private static final List<String> COLUMNS =
      List.of("on", "what", "line_from", "line_at", "read_from", "readings", "unit");

  private final Layout layout;
  private final Tape tape;
  private final List<List<Cell>> rows = new ArrayList<>();

  private MarkingOut(Layout layout) {
    this.layout = layout;
    this.tape = layout.wall().tape();
  }

  /** Plates and studs first, then each sheet. */
  public static Table of(CheckedLayout checked) {
    MarkingOut table = new MarkingOut(checked.layout());
    checked.layout().facets().forEach(table::addFrame);
    checked.layout().sheets().forEach(table::addHoles);
    checked.layout().facets().forEach(table::addScrews);
    return new Table("Marking out", COLUMNS, table.rows);
  }

  private void addFrame(FacetLayout facet) {
    Map<String, Member> byMark =
        facet.members().stream().collect(Collectors.toMap(Member::mark, Function.identity()));
    for (Member bearer : facet.members()) {
      if (bearer.role() == MemberRole.PLATE
          || !bearer.isUpOrLevel()
          || bearer.role() == MemberRole.HEADER) {
        addEnding(facet, bearer, byMark);
      }
    }
    for (Member trimmer : members(facet, MemberRole.TRIMMER)) {
      List<Double> low = new ArrayList<>();
      for (Member header : members(facet, MemberRole.HEADER)) {
        if (touches(header, trimmer)) {
          low.add(header.box().getMinY() - trimmer.box().getMinY());
        }
      }
      low.removeIf(place -> place < 0);
      if (!low.isEmpty()) {
        add(trimmer.mark(), "underside of each header", "", "", "lower end", low);
      }
    }
    addBlocking(facet);
  }

  private static boolean touches(Member header, Member trimmer) {
    return header.footprint().distance(trimmer.footprint()) < Tolerance.TOUCH;
  }

  /** What ends on a member that runs level or slants. */
  private void addEnding(FacetLayout facet, Member bearer, Map<String, Member> byMark) {
    Direction along = bearer.direction();
    double from = along.span(bearer.footprint()).low();
    List<Double> places = new ArrayList<>();
    for (Joint joint : facet.joints()) {
      boolean ends = joint.kind() == Joint.Kind.END && joint.second().equals(bearer.mark());
      if (ends && byMark.get(joint.first()).role().isUpright()) {
        places.add(along.along(joint.place()) - joint.length() / 2 - from);
      }
    }
    if (!places.isEmpty()) {
      String end = bearer.isUpOrLevel() ? "left end" : "lower end, on the side of the sheet";
      add(bearer.mark(), "left side of each stud", "", "", end, places);
    }
  }

  /** Read along a stud; a frame so short that it has none is refused for it. */
  private void addBlocking(FacetLayout facet) {
    List<Member> blocking = members(facet, MemberRole.BLOCKING);
    List<Member> upright = members(facet, MemberRole.STUD);
    if (!blocking.isEmpty() && !upright.isEmpty()) {
      Member stud = upright.get(0);
      List<Double> low =
          blocking.stream().map(block -> block.box().getMinY() - stud.box().getMinY()).toList();
      String studs = "studs of " + facet.facet().name();
      String from = stud.lowEnd().tilt() == 0 ? "lower end" : "lower end, on the side of the sheet";
      add(studs, "underside of each blocking", "", "", from, low);
    }
  }

  private static List<Member> members(FacetLayout facet, MemberRole role) {
    return facet.members().stream().filter(member -> member.role() == role).toList();
  }

  private void addHoles(LaidSheet sheet) {
    SheetDatum datum = SheetDatum.of(layout, sheet);
    grouped(sheet.inserts(), hole -> datum.up(hole.spot().y()))
        .forEach(
            (y, holes) ->
                add(
                    sheet.mark(),
                    "insert holes",
                    datum.levelEdge(),
                    at(y),
                    datum.sideEdge(),
                    holes.stream().map(hole -> datum.across(hole.spot().x())).toList()));
  }

  private void addScrews(FacetLayout facet) {
    for (LaidSheet sheet : layout.sheets()) {
      for (LaidPiece laid : sheet.pieces()) {
        for (FastenerLine line : facet.fastenerLines()) {
          if (line.piece().equals(laid.piece().mark())) {
            addScrews(sheet, line, laid.placement());
          }
        }
      }
    }
  }

  private void addScrews(LaidSheet sheet, FastenerLine line, Placement placement) {
    String what = "screws into " + line.member();
    SheetDatum datum = SheetDatum.of(layout, sheet);
    String side = datum.sideEdge();
    String level = datum.levelEdge();
    List<Double> across = read(line, screw -> datum.across(placement.x(screw.centre())));
    List<Double> up = read(line, screw -> datum.up(placement.y(screw.centre())));
    if (isOne(across) && !isOne(up)) {
      add(sheet.mark(), what, side, at(across.get(0)), level, up);
    } else if (isOne(up)) {
      add(sheet.mark(), what, level, at(up.get(0)), side, across);
    } else {
      for (int at = 0; at < line.screws().size(); at++) {
        List<Double> one = List.of(across.get(at));
        add(sheet.mark(), what, level, at(up.get(at)), side, one);
      }
    }
  }

  private static List<Double> read(FastenerLine line, Function<Screw, Double> reading) {
    return line.screws().stream().map(reading).toList();
  }

  private static boolean isOne(List<Double> readings) {
    return readings.stream().distinct().count() == 1;
  }

  private static <T> Map<Double, List<T>> grouped(List<T> things, ToDoubleFunction<T> place) {
    Function<T, Double> key = place::applyAsDouble;
    return things.stream().collect(Collectors.groupingBy(key, TreeMap::new, Collectors.toList()));
  }

  private void add(
      String on,
      String what,
      String lineFrom,
      String lineAt,
      String readFrom,
      Collection<Double> readings) {
    String joined =
        new TreeSet<>(readings).stream().map(tape::reading).collect(Collectors.joining("; "));
    rows.add(
        List.of(
            Cell.of(on),
            Cell.of(what),
            Cell.of(lineFrom),
            Cell.of(lineAt),
            Cell.of(readFrom),
            Cell.of(withUnit(joined)),
            Cell.of(tape.unit().word())));
  }

  /** A reading by itself; a bare fraction of an inch would become a date in a spreadsheet. */
  private String at(double place) {
    return withUnit(tape.reading(place));
  }

  private String withUnit(String readings) {
    return tape.unit() == LengthUnit.IN ? readings + " " + tape.unit().word() : readings;
  }
}
