package plycrag.layout.screws;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.locationtech.jts.geom.Point;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.Screw;
import plycrag.units.Tape;
import plycrag.wall.Facet;

/**
 * The inserts and screws of a facet under their marks, which are told apart together.
 *
 * @param inserts all that were asked for
 * @param lines with their screws
 */
public record MarkedHoles(List<Insert> inserts, List<FastenerLine> lines) {

  public static MarkedHoles of(
      Facet facet, List<Insert> inserts, List<FastenerLine> lines, Tape tape) {
    List<Point> places = new ArrayList<>();
    inserts.forEach(insert -> places.add(insert.centre()));
    lines.forEach(line -> line.screws().forEach(screw -> places.add(screw.centre())));
    Iterator<String> marks = HoleMarks.of(facet.name(), places, tape).iterator();
    List<Insert> marked = inserts.stream().map(insert -> insert.withMark(marks.next())).toList();
    List<FastenerLine> markedLines =
        lines.stream()
            .map(
                line ->
                    new FastenerLine(
                        line.piece(),
                        line.member(),
                        line.line(),
                        line.screws().stream().map(screw -> screw.withMark(marks.next())).toList()))
            .toList();
    return new MarkedHoles(marked, markedLines);
  }

  /** All screws, line by line. */
  public List<Screw> screws() {
    return lines.stream().flatMap(line -> line.screws().stream()).toList();
  }
}
