package plycrag.app;

import java.util.List;
import java.util.stream.Stream;
import plycrag.catalog.FlatSteel;
import plycrag.check.CheckedLayout;
import plycrag.check.Inspection;
import plycrag.finding.Finding;
import plycrag.layout.LayoutPlan;
import plycrag.prices.PriceList;
import plycrag.read.Parameters;
import plycrag.read.Reading;
import plycrag.read.WallMaker;
import plycrag.stock.Shortage;
import plycrag.wall.InsertPosition;
import plycrag.wall.Output;
import plycrag.wall.buying.MaterialWishes;

/** What became of a user's files: a checked layout, or what is wrong with them. */
public sealed interface Design {

  /**
   * Files that cannot be read as parameters and prices.
   *
   * @param findings all that is wrong, by line and column
   */
  record Unreadable(List<Finding> findings) implements Design {}

  /**
   * A wall that was laid out and judged, and what its file says that is no part of a wall.
   *
   * @param checked the verdict; the machine and all else that is told of the wall stand in it
   * @param buying what is to be bought, beyond its sizes
   * @param prices what the price list says; without offers if the file names none
   * @param output what files are to be written
   */
  record Judged(CheckedLayout checked, MaterialWishes buying, PriceList prices, Output output)
      implements Design {}

  /** Lays out and judges what was read. */
  static Design of(
      Reading<Parameters> reading,
      Reading<PriceList> prices,
      Reading<List<InsertPosition>> positions,
      Reading<List<FlatSteel>> steel) {
    List<Finding> findings =
        Stream.of(reading.findings(), prices.findings(), positions.findings(), steel.findings())
            .flatMap(List::stream)
            .toList();
    if (!findings.isEmpty()) {
      return new Unreadable(findings);
    }
    Parameters parameters = reading.value().orElseThrow().preferring(steel.value().orElseThrow());
    PriceList list = prices.value().orElseThrow();
    CheckedLayout checked =
        Inspection.of(LayoutPlan.of(WallMaker.of(parameters, positions.value().orElseThrow())));
    List<Finding> lacking = Shortage.of(checked, list);
    return new Judged(
        Inspection.noting(checked, lacking), parameters.buying(), list, parameters.output());
  }
}
