package plycrag.layout.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;
import plycrag.wall.Inserts;
import plycrag.wall.Recess;
import plycrag.wall.Wall;
import plycrag.wall.machine.KeepOut;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.MarkEngraving;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.ToolBox;

/**
 * Finds room for the marks of pieces: clear of edges, of openings, of holes with what covers them,
 * and of places that tools keep out of. The piece's mark and its facet are engraved, or the mark
 * alone where there is no room for both. Places are tried row by row from the piece's lower left,
 * half a letter apart.
 */
final class EngravedMarks {
  /** What stays between a letter and an edge or a hole (a choice, no source), mm. */
  private static final double APART = 4;

  private final Wall wall;
  private final MarkEngraving wanted;
  private final LaidSheet sheet;

  private EngravedMarks(Wall wall, MarkEngraving wanted, LaidSheet sheet) {
    this.wall = wall;
    this.wanted = wanted;
    this.sheet = sheet;
  }

  /** The marks on a sheet, piece by piece; none where none are asked for or there is no room. */
  static List<EngravedMark> of(Wall wall, LaidSheet sheet) {
    return wall.machine().work().marks().stream()
        .map(wanted -> new EngravedMarks(wall, wanted, sheet))
        .flatMap(marks -> sheet.pieces().stream().flatMap(laid -> marks.mark(laid).stream()))
        .toList();
  }

  private Optional<EngravedMark> mark(LaidPiece laid) {
    String mark = laid.piece().mark();
    String whole = mark + " " + laid.facet().toUpperCase(Locale.ROOT);
    List<Polygon> taken = taken(laid);
    return place(laid, whole, taken).or(() -> place(laid, mark, taken));
  }

  private Optional<EngravedMark> place(LaidPiece laid, String text, List<Polygon> taken) {
    double width = EngravedMark.width(text, wanted.height());
    Envelope box = laid.piece().core().getEnvelopeInternal();
    double step = wanted.height() / 2;
    for (double low = box.getMinY() + APART; low < box.getMaxY(); low += step) {
      for (double left = box.getMinX() + APART; left < box.getMaxX(); left += step) {
        Envelope room = new Envelope(left, left + width, low, low + wanted.height());
        if (isFree(room, laid, taken)) {
          double begin = laid.placement().mirrored() ? room.getMaxX() : left;
          return Optional.of(
              new EngravedMark(
                  laid.piece().mark(),
                  text,
                  wanted.height(),
                  new Coordinate(Shapes.onGrid(begin), Shapes.onGrid(low)),
                  laid.placement()));
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isFree(Envelope room, LaidPiece laid, List<Polygon> taken) {
    Envelope around = room.copy();
    around.expandBy(APART);
    Polygon area = Shapes.rectangle(around);
    Polygon onSheet = laid.placement().of(Shapes.rectangle(room));
    return laid.piece().core().covers(area)
        && taken.stream().noneMatch(other -> other.intersects(onSheet));
  }

  /** What an insert takes of the sheet's back, mm. */
  private double covering() {
    Inserts inserts = wall.inserts();
    return inserts.body().recess().map(Recess::diameter).orElse(inserts.body().flange());
  }

  /** What letters keep out of on the sheet. */
  private List<Polygon> taken(LaidPiece laid) {
    List<Polygon> taken = new ArrayList<>();
    for (MachinedHole hole : sheet.holes()) {
      if (hole.marks().piece().equals(laid.piece().mark())) {
        boolean covered = hole.kind() == MachinedHole.Kind.INSERT;
        double over =
            covered ? Math.max(hole.bore().diameter(), covering()) : hole.bore().diameter();
        taken.add(Shapes.circle(hole.spot().x(), hole.spot().y(), over + 2 * APART));
      }
    }
    Machine machine = wall.machine();
    double beside = ToolBox.engraver(machine).map(Tool::diameter).orElse(0.0) / 2 + APART;
    for (KeepOut place : machine.equipment().keepOuts()) {
      Envelope box =
          new Envelope(place.corner().left(), place.right(), place.corner().low(), place.high());
      box.expandBy(beside);
      taken.add(Shapes.rectangle(box));
    }
    return taken;
  }
}
