package plycrag.params;

import java.util.List;
import java.util.Optional;

/**
 * Everything a parameter file says, validated; one small record for each stage. Only {@code
 * params}, {@code wall} and {@code app} see it whole.
 */
public record Parameters(
    WallParameters wall,
    List<FacetParameters> facets,
    List<CutoutParameters> cutouts,
    Optional<SupportParameters> support,
    RoomParameters room,
    SheetParameters sheet,
    NestingParameters nesting,
    FrameParameters frame,
    JointParameters joints,
    StockParameters stock,
    BuyingParameters buying,
    InsertParameters inserts,
    List<ZoneParameters> zones,
    ScrewParameters screws,
    ClearanceParameters clearance,
    MachineParameters machine,
    OutputParameters output) {

  /** Copies the lists. */
  public Parameters {
    cutouts = List.copyOf(cutouts);
    facets = List.copyOf(facets);
    zones = List.copyOf(zones);
  }
}
