package plycrag.drawing;

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
import plycrag.layout.FacetLayout;
import plycrag.layout.FastenerLine;
import plycrag.layout.LaidSheet;
import plycrag.layout.Layout;
import plycrag.layout.MachinedHole;
import plycrag.layout.Member;
import plycrag.layout.Role;
import plycrag.layout.Screw;
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
    for (Member plate : members(facet, Role.PLATE)) {
      List<Double> left =
          members(facet, Role.STUD).stream()
              .filter(stud -> stud.box().getMaxX() > plate.box().getMinX())
              .filter(stud -> stud.box().getMinX() < plate.box().getMaxX())
              .map(stud -> stud.box().getMinX() - plate.box().getMinX())
              .toList();
      add(plate.mark(), "left side of each stud", "", "", "left end", left);
    }
    List<Member> blocking = members(facet, Role.BLOCKING);
    if (!blocking.isEmpty()) {
      Member stud = members(facet, Role.STUD).get(0);
      List<Double> low =
          blocking.stream().map(block -> block.box().getMinY() - stud.box().getMinY()).toList();
      String studs = "studs of " + facet.facet().name();
      String from = stud.lowEnd() == 0 ? "lower end" : "lower end, on the side of the sheet";
      add(studs, "underside of each blocking", "", "", from, low);
    }
  }

  private static List<Member> members(FacetLayout facet, Role role) {
    return facet.members().stream().filter(member -> member.role() == role).toList();
  }

  private void addHoles(LaidSheet sheet) {
    grouped(sheet.holes(), MachinedHole::y)
        .forEach(
            (y, holes) ->
                add(
                    sheet.mark(),
                    "insert holes",
                    "lower edge",
                    at(y),
                    "left edge",
                    holes.stream().map(MachinedHole::x).toList()));
  }

  private void addScrews(FacetLayout facet) {
    for (LaidSheet sheet : layout.sheets()) {
      double left = sheet.stock().placement().originU();
      double low = sheet.stock().placement().originV();
      for (FastenerLine line : facet.fastenerLines()) {
        if (line.piece().equals(sheet.piece().mark())) {
          addScrews(sheet, line, left, low);
        }
      }
    }
  }

  private void addScrews(LaidSheet sheet, FastenerLine line, double left, double low) {
    String what = "screws into " + line.member();
    boolean up = line.line().getStartPoint().getX() == line.line().getEndPoint().getX();
    Screw first = line.screws().get(0);
    if (up) {
      List<Double> readings =
          line.screws().stream().map(screw -> screw.centre().getY() - low).toList();
      String at = at(first.centre().getX() - left);
      add(sheet.mark(), what, "left edge", at, "lower edge", readings);
    } else {
      List<Double> readings =
          line.screws().stream().map(screw -> screw.centre().getX() - left).toList();
      String at = at(first.centre().getY() - low);
      add(sheet.mark(), what, "lower edge", at, "left edge", readings);
    }
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
