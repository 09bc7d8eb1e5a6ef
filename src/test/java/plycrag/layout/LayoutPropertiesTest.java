package plycrag.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.assertj.core.data.Offset;
import org.locationtech.jts.geom.Envelope;
import plycrag.Walls;
import plycrag.check.Inspection;
import plycrag.finding.Finding;

/** What holds for every wall, whatever its size and lean. */
class LayoutPropertiesTest {
  private static final double MICRON = 1e-3;

  /** The measures of a random wall, and its parameter file. */
  record Case(int width, int length, int angle, int raise, int gap, int spacing, String words) {
    String toml() {
      return "[wall]\nraise = "
          + raise
          + "\n[[facet]]\nwidth = "
          + width
          + "\nlength = "
          + length
          + "\nangle = "
          + angle
          + "\n[sheet]\nseam-gap = "
          + gap
          + words
          + "\nstud-spacing = "
          + spacing
          + "\n[stock]\nlengths = [3000, 6000]\n";
    }
  }

  @Provide
  Arbitrary<Case> cases() {
    Arbitrary<String> words =
        Arbitraries.of(
            "\n[frame]",
            "\nlay = \"up\"\n[frame]",
            "\nlay = \"across\"\n[frame]",
            "\nlay = \"up\"\n[frame]\nseams = \"flat\"");
    return Combinators.combine(
            Arbitraries.integers().between(600, 6000),
            Arbitraries.integers().between(600, 5000),
            Arbitraries.integers().between(-15, 60),
            Arbitraries.of(0, 100, 300, 345, 1000),
            Arbitraries.integers().between(0, 4),
            Arbitraries.integers().between(250, 650),
            words)
        .as(Case::new);
  }

  /** Areas add up exactly on the grid: pieces, and the gaps between rows and columns. */
  @Property(tries = 200)
  void piecesAndGapsTileTheFacet(@ForAll("cases") Case wall) {
    FacetLayout facet = Walls.laidOut(wall.toml()).facets().get(0);
    long across = facet.seams().stream().filter(seam -> seam.axis() == Axis.ACROSS).count();
    long up = facet.seams().size() - across;
    double gaps =
        wall.gap() * (across * wall.width() + up * wall.length())
            - across * up * wall.gap() * wall.gap();
    double pieces = facet.pieces().stream().mapToDouble(piece -> piece.outline().getArea()).sum();
    assertThat(Math.abs(pieces + gaps - (double) wall.width() * wall.length())).isLessThan(1);
    assertThat(facet.pieces()).hasSize((int) ((across + 1) * (up + 1)));
    for (Piece piece : facet.pieces()) {
      double longer = Math.max(piece.box().getWidth(), piece.box().getHeight());
      double shorter = Math.min(piece.box().getWidth(), piece.box().getHeight());
      assertThat(longer).isLessThanOrEqualTo(2440 + MICRON);
      assertThat(shorter).isLessThanOrEqualTo(1220 + MICRON);
    }
  }

  /** The frame has no overlap and leaves no edge bare. */
  @Property(tries = 200)
  void nothingOverlapsAndEveryEdgeIsBacked(@ForAll("cases") Case wall) {
    Layout layout = Walls.laidOut(wall.toml());
    assertThat(Inspection.of(layout).findings().stream().map(Finding::rule))
        .doesNotContain("members-overlap", "seam-backing", "screw-sheet-edge", "screw-member-edge");
    assertThat(overlaps(layout.facets().get(0).members())).isEmpty();
  }

  private static List<String> overlaps(List<Member> members) {
    List<String> overlaps = new ArrayList<>();
    for (Member one : members) {
      for (Member other : members) {
        Envelope shared = one.box().intersection(other.box());
        if (!one.equals(other) && shared.getArea() > 1) {
          overlaps.add(one.mark() + " " + other.mark());
        }
      }
    }
    return overlaps;
  }

  @Property(tries = 200)
  void studsStandNoFurtherApartThanAsked(@ForAll("cases") Case wall) {
    List<Double> middles =
        Walls.laidOut(wall.toml()).facets().get(0).members().stream()
            .filter(member -> member.role() == Role.STUD)
            .map(member -> member.box().centre().x)
            .sorted(Comparator.naturalOrder())
            .toList();
    for (int next = 1; next < middles.size(); next++) {
      assertThat(middles.get(next) - middles.get(next - 1))
          .isLessThanOrEqualTo(wall.spacing() + MICRON);
    }
  }

  @Property(tries = 200)
  void screwsStandOnTheGridNoFurtherApartThanAsked(@ForAll("cases") Case wall) {
    for (FastenerLine line : Walls.laidOut(wall.toml()).facets().get(0).fastenerLines()) {
      for (int at = 0; at < line.screws().size(); at++) {
        Screw screw = line.screws().get(at);
        assertThat(screw.centre().getX()).isEqualTo(Math.rint(screw.centre().getX()));
        assertThat(screw.centre().getY()).isEqualTo(Math.rint(screw.centre().getY()));
        if (at > 0) {
          assertThat(screw.centre().distance(line.screws().get(at - 1).centre()))
              .isPositive()
              .isLessThanOrEqualTo(300);
        }
      }
    }
  }

  /** Marks are unique, and every insert that lies in a piece is drilled once. */
  @Property(tries = 200)
  void everyInsertIsDrilledOnceAtItsPlace(@ForAll("cases") Case wall) {
    Layout layout = Walls.laidOut(wall.toml());
    FacetLayout facet = layout.facets().get(0);
    assertThat(facet.inserts().stream().map(Insert::mark)).doesNotHaveDuplicates();
    long inPieces =
        facet.inserts().stream()
            .filter(
                insert ->
                    facet.pieces().stream()
                        .anyMatch(piece -> piece.box().covers(insert.centre().getCoordinate())))
            .count();
    assertThat(layout.holes().stream().map(MachinedHole::mark)).doesNotHaveDuplicates();
    assertThat(layout.holes()).hasSize((int) inPieces);
    for (LaidSheet sheet : layout.sheets()) {
      Envelope piece = sheet.piece().box();
      for (MachinedHole hole : sheet.holes()) {
        assertThat(hole.x() + piece.getMinX()).isCloseTo(hole.place().getX(), offset());
        assertThat(hole.y() + piece.getMinY()).isCloseTo(hole.place().getY(), offset());
      }
    }
  }

  private static Offset<Double> offset() {
    return Offset.offset(MICRON);
  }

  @Property(tries = 50)
  void theSameWallIsLaidOutTheSame(@ForAll("cases") Case wall) {
    assertThat(Walls.laidOut(wall.toml())).isEqualTo(Walls.laidOut(wall.toml()));
  }
}
