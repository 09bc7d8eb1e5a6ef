package plycrag.layout.skin;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.wall.Facet;
import plycrag.wall.Sheet;
import plycrag.wall.Sheet.Lay;
import plycrag.wall.Sheet.Start;
import plycrag.wall.Wall;

/**
 * The pieces that skin a facet, in straight rows and columns, and the seams between them. Pieces
 * and gaps tile the facet.
 *
 * @param lay which way the sheets' long side runs
 * @param pieces from the floor up, left to right
 * @param seams those that run up first, each kind in order
 */
public record Skin(Lay lay, List<Piece> pieces, List<Seam> seams) {
  /** Copies the lists. */
  public Skin {
    pieces = List.copyOf(pieces);
    seams = List.copyOf(seams);
  }

  /**
   * The pieces as they were asked for. What was not asked for is chosen: fewest seams in the way of
   * openings, then fewest pieces below the least width, then fewest sheets, then most whole ones;
   * of equal ones across before up, and from the lower left before the other corners.
   *
   * <p>Its pieces are numbered from 1.
   */
  public static Skin of(Facet facet, Wall wall) {
    Sheet sheet = wall.sheet();
    SeamPlaces places = new SeamPlaces(facet, wall);
    Tiler tiler = new Tiler(FoldCuts.of(facet, wall), places, wall);
    List<Skin> skins = new ArrayList<>();
    for (Lay lay : sheet.laying().lay().map(List::of).orElse(List.of(Lay.values()))) {
      for (Start start : sheet.laying().start().map(List::of).orElseGet(() -> starts(wall))) {
        skins.add(tiler.laid(lay, start));
      }
    }
    return skins.stream()
        .min(
            Comparator.comparingLong((Skin one) -> places.count(one.seams))
                .thenComparing(one -> one.slivers(sheet))
                .thenComparing(one -> one.pieces.size())
                .thenComparing(one -> -one.whole(sheet)))
        .orElseThrow();
  }

  /** All corners, those of the side first on which things are set out. */
  private static List<Start> starts(Wall wall) {
    return Stream.of(Start.values())
        .map(start -> wall.isMirrored() ? start.mirrored() : start)
        .toList();
  }

  /** The same with its pieces numbered from another number. */
  public Skin numberedFrom(int first) {
    List<Piece> numbered = new ArrayList<>();
    for (Piece piece : pieces) {
      numbered.add(piece.with(mark(first + numbered.size())));
    }
    return new Skin(lay, numbered, seams);
  }

  private static String mark(int number) {
    return "P" + number;
  }

  private long slivers(Sheet sheet) {
    return pieces.stream().filter(piece -> isSliver(piece, sheet)).count();
  }

  /** Whether a piece is narrower than the least width. */
  static boolean isSliver(Piece piece, Sheet sheet) {
    Envelope box = piece.blank().getEnvelopeInternal();
    return Math.min(box.getWidth(), box.getHeight()) < sheet.seams().leastWidth() - Tolerance.TOUCH;
  }

  private long whole(Sheet sheet) {
    double area = sheet.length() * sheet.width() - 1;
    return pieces.stream().filter(piece -> piece.blank().getArea() > area).count();
  }

  /** Tiles one facet. Blanks fill it with their gaps; faces are trimmed to their edges. */
  private static final class Tiler {
    private final Facet facet;
    private final SeamPlaces places;
    private final Wall wall;
    private final Polygon front;
    private final Polygon back;
    private final Polygon blank;

    Tiler(FoldCuts cuts, SeamPlaces places, Wall wall) {
      this.facet = cuts.facet();
      this.places = places;
      this.wall = wall;
      this.front = cuts.front();
      this.back = cuts.back();
      this.blank = cuts.blank();
    }

    Skin laid(Lay lay, Start start) {
      SheetRows coursing = SheetRows.of(blank.getEnvelopeInternal(), places, wall, lay, start);
      Envelope box = facet.boundary().getEnvelopeInternal();
      return new Skin(lay, pieces(coursing.cells()), coursing.seams(box));
    }

    private List<Piece> pieces(List<Envelope> cells) {
      List<Piece> pieces = new ArrayList<>();
      for (Envelope cell : cells) {
        for (Polygon part : Shapes.sharedAreas(blank, Shapes.rectangle(cell))) {
          piece(part, mark(pieces.size() + 1)).ifPresent(pieces::add);
        }
      }
      return pieces;
    }

    /** What is cut from a blank; nothing if it has no front or no back. */
    private Optional<Piece> piece(Polygon part, String mark) {
      List<Polygon> outlines = Shapes.sharedAreas(part, front);
      List<Polygon> behind = Shapes.sharedAreas(part, back);
      return outlines.isEmpty() || behind.isEmpty()
          ? Optional.empty()
          : Optional.of(new Piece(mark, Shapes.largest(outlines), Shapes.largest(behind), part));
    }
  }
}
