package plycrag.wall;

import java.util.List;
import plycrag.params.ClearanceParameters;
import plycrag.params.FrameParameters;
import plycrag.params.InsertParameters;
import plycrag.params.Parameters;
import plycrag.params.ScrewParameters;
import plycrag.params.SheetParameters;
import plycrag.params.StockParameters;
import plycrag.units.Tape;

/**
 * What is to be built.
 *
 * @param name printed everywhere
 * @param tape what it is set out with
 * @param facets from the floor up
 * @param sheet the stock sheets and how they are laid
 * @param frame the framing behind them
 * @param stock the timber that the merchant sells
 * @param inserts the pattern and the inserts
 * @param screws what holds the sheets to the frame
 * @param clearance the least distances
 */
public record Wall(
    String name,
    Tape tape,
    List<Facet> facets,
    SheetParameters sheet,
    FrameParameters frame,
    StockParameters stock,
    InsertParameters inserts,
    ScrewParameters screws,
    ClearanceParameters clearance) {

  /** Copies the facets. */
  public Wall {
    facets = List.copyOf(facets);
  }

  /** The wall that a parameter file describes. */
  public static Wall of(Parameters parameters) {
    List<Facet> facets =
        parameters.facets().stream()
            .map(
                facet ->
                    new Facet(
                        facet.name(),
                        facet.angle(),
                        facet.width(),
                        facet.length(),
                        parameters.wall().raise()))
            .toList();
    return new Wall(
        parameters.wall().name(),
        new Tape(parameters.wall().unit()),
        facets,
        parameters.sheet(),
        parameters.frame(),
        parameters.stock(),
        parameters.inserts(),
        parameters.screws(),
        parameters.clearance());
  }
}
