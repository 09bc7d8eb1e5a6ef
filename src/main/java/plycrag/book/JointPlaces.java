package plycrag.book;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plycrag.check.CheckedLayout;
import plycrag.document.Book.Block;
import plycrag.document.Book.Listing;
import plycrag.document.Book.Paragraph;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.solve.fixing.LapScrews;
import plycrag.units.Tape;

/** Where screws and bolts go that hold members beside each other, and how brackets are set. */
final class JointPlaces {
  private JointPlaces() {}

  static List<Block> of(CheckedLayout checked) {
    Layout layout = checked.layout();
    List<List<Cell>> rows = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      rows.addAll(rows(facet.joints(), true, layout));
    }
    layout.support().ifPresent(support -> rows.addAll(rows(support.joints(), false, layout)));
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Paragraph(
            "A bracket sits in the corner of the two, in the middle of the narrower face; its"
                + " screws go into the holes nearest to the bend, half of them in each leg, and"
                + " take pilot holes. A strap lies flat over both, its middle on the line between them, as"
                + " many screws in each; where two are listed, one lies on either side. Screws stay"
                + " out of end grain, but for those through a plate into a stud where nothing else"
                + " finds room: they keep it in its place, and nothing hangs on them. A bracket or strap of another make"
                + " does as well if its legs, its holes and its screws are of the same size."));
    if (!rows.isEmpty()) {
      List<String> columns = List.of("First", "Second", "Along / across the first", "Across from");
      blocks.add(
          new Listing(
              new Table(
                  "Screws and bolts between members, each along from the first one's lower or left end"
                      + " and across it",
                  columns,
                  rows)));
    }
    return blocks;
  }

  private static List<List<Cell>> rows(List<Joint> joints, boolean onSheets, Layout layout) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Joint joint : joints) {
      layout
          .fixings()
          .throughOf(joint)
          .ifPresent(found -> rows.add(row(joint, found, onSheets, layout.wall().tape())));
    }
    return rows;
  }

  /** A support's members have no sheets on them. */
  private static String from(boolean onSheets) {
    return onSheets ? "the sheets" : "its lower or left side";
  }

  private static List<Cell> row(Joint joint, LapScrews screws, boolean onSheets, Tape tape) {
    String places =
        screws.spots().stream()
            .map(spot -> tape.reading(spot.along()) + " / " + tape.reading(spot.across()))
            .collect(Collectors.joining(", "));
    return List.of(
        Cell.of(joint.through()),
        Cell.of(joint.into()),
        Cell.of(places + " " + tape.unit().word()),
        Cell.of(from(onSheets)));
  }
}
