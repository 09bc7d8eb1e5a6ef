package plycrag.book;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import plycrag.check.CheckedLayout;
import plycrag.document.Book.Block;
import plycrag.document.Book.Listing;
import plycrag.document.Book.Paragraph;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.drawing.pen.ViewKind;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.standing.FallZone;
import plycrag.layout.standing.Mass;
import plycrag.layout.standing.Raising;
import plycrag.layout.standing.RunAtAngle;
import plycrag.layout.support.Anchor;
import plycrag.layout.support.SupportPart;
import plycrag.layout.support.Tether;
import plycrag.layout.support.WallSupport;
import plycrag.units.Decimal;
import plycrag.units.Tape;
import plycrag.wall.room.GivenSupport;
import plycrag.wall.room.GivenSupport.Across;
import plycrag.wall.room.GivenSupport.Kind;
import plycrag.wall.room.GivenSupport.Lateral;
import plycrag.wall.room.Room.Floor;
import plycrag.wall.room.Room.Handling;

/**
 * How the wall is brought up, what it weighs, what it is fixed to and what it takes of the room.
 */
final class StandingUp {
  private final Figures figures;
  private final Layout layout;
  private final Tape tape;

  StandingUp(CheckedLayout checked, Figures figures) {
    this.figures = figures;
    this.layout = checked.layout();
    this.tape = layout.wall().tape();
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>(pictures());
    blocks.add(masses());
    for (List<FacetLayout> run : layout.runs()) {
      blocks.add(new Paragraph(raising(run)));
    }
    if (isFixed()) {
      blocks.add(Cautions.fixing());
    }
    layout.support().ifPresent(support -> addSupport(support, blocks));
    FloorPacking.of(layout).ifPresent(blocks::add);
    blocks.add(envelopes());
    return blocks;
  }

  /** Of what holds it up, if anything does. */
  private List<Block> pictures() {
    List<Block> blocks = new ArrayList<>();
    blocks.addAll(figures.ofParts(ViewKind.STANDING_BACK, "How it stands, from behind."));
    for (List<FacetLayout> run : layout.runs()) {
      String lowest = run.get(0).facet().name();
      blocks.addAll(
          figures.ofParts(ViewKind.SUPPORT_SIDE, lowest, "One station, to set out from."));
      blocks.addAll(
          figures.ofParts(ViewKind.SUPPORT_BACK, lowest, "Where the stations and anchors are."));
    }
    return blocks;
  }

  /** What each part weighs and how many lift it. */
  private Block masses() {
    Handling handling = layout.wall().room().handling();
    List<List<Cell>> rows = new ArrayList<>();
    Mass whole = new Mass(0, new Vector3(0, 0, 0));
    for (FacetLayout facet : layout.facets()) {
      Mass frame = Mass.ofFrame(layout.wall(), facet);
      Mass sheets = Mass.ofSheets(layout.wall(), facet);
      whole = whole.plus(frame).plus(sheets);
      rows.add(row("frame of facet " + facet.facet().name(), frame, handling));
      rows.add(row("the same with its sheets", frame.plus(sheets), handling));
    }
    if (!layout.standing().isEmpty()) {
      Mass support = Mass.ofSupport(layout.wall(), layout.standing());
      whole = whole.plus(support);
      rows.add(row("support", support, handling));
    }
    rows.add(row("all of it", whole, handling));
    return new Listing(
        new Table(
            "What it weighs, without screws and inserts, and who lifts it at "
                + Decimal.of(handling.perPerson(), 1)
                + " kg a person",
            List.of("What", "Mass, kg", "People", "Right", "Out", "Up"),
            rows));
  }

  /** With the centre of gravity from the wall's left, from the foot of its face, and the floor. */
  private List<Cell> row(String what, Mass mass, Handling handling) {
    return List.of(
        Cell.of(what),
        Cell.number(mass.kilograms(), 1),
        Cell.of(mass.people(handling.perPerson())),
        Cell.of(tape.text(tape.snap(mass.centre().x()))),
        Cell.of(tape.text(tape.snap(mass.centre().y()))),
        Cell.of(tape.text(tape.snap(mass.centre().z()))));
  }

  private String raising(List<FacetLayout> run) {
    String names = run.size() == 1 ? "The frame" : "The frames joined";
    return names
        + " of "
        + run.stream().map(facet -> facet.facet().name()).collect(Collectors.joining(", "))
        + (run.size() == 1 ? " needs " : " need ")
        + tape.text(tape.snapUp(Raising.diagonal(layout.wall(), run)))
        + " of height to be tilted up from the floor"
        + (run.size() == 1 ? "." : "; one by one: " + alone(run) + ".");
  }

  private String alone(List<FacetLayout> run) {
    List<String> words = new ArrayList<>();
    for (FacetLayout facet : run) {
      double diagonal = Raising.diagonal(layout.wall(), List.of(facet));
      words.add(facet.facet().name() + " " + tape.text(tape.snapUp(diagonal)));
    }
    return String.join(", ", words);
  }

  /** Whether some of it is fixed to the building, or may be: what holds it is not told. */
  private boolean isFixed() {
    return layout.facets().stream()
        .anyMatch(
            facet ->
                !layout.wall().support(facet.facet()).map(GivenSupport::hasPosts).orElse(false));
  }

  private void addSupport(WallSupport support, List<Block> blocks) {
    List<GivenSupport> onPosts =
        support.parts().stream()
            .map(SupportPart::asked)
            .filter(GivenSupport::hasPosts)
            .distinct()
            .toList();
    if (!onPosts.isEmpty()) {
      blocks.add(new Paragraph(shims()));
      onPosts.forEach(asked -> blocks.add(new Paragraph(stiffness(asked))));
    }
    if (support.parts().stream().anyMatch(part -> !part.asked().hasPosts())) {
      blocks.add(anchors(support));
    }
    if (!support.tethers().isEmpty()) {
      blocks.add(tethers(support));
    }
  }

  /** What keeps the posts from swaying, along the wall and across it. */
  private static String stiffness(GivenSupport asked) {
    GivenSupport.Bracing bracing = asked.bracing();
    boolean swings = asked.kind() == Kind.HINGED;
    String side = swings ? "fronts" : "backs";
    String along =
        switch (bracing.lateral()) {
          case BRACES ->
              "Along the wall the braces on the " + side + " of the posts keep it from swaying";
          case KNEE_BRACES -> "Along the wall the knee braces under the beam keep it from swaying";
          case SHEETS -> "Along the wall the sheets alone keep it from swaying";
          case NONE -> "Along the wall nothing keeps it from swaying";
        };
    boolean kneesAcross = !swings && bracing.across() == Across.KNEE_BRACES;
    String feet =
        swings
            ? "; toward it and away from it those behind the posts do."
            : "; toward it and away from it those from the feet of the posts do.";
    String across = kneesAcross ? "; toward it and away from it those under the ties do." : feet;
    boolean bent = bracing.lateral() == Lateral.KNEE_BRACES || kneesAcross;
    return along
        + across
        + " Keep it propped until all of them are fixed."
        + (bent
            ? " Knee braces bend the posts that they hold: both are for an engineer to judge."
            : "");
  }

  private String shims() {
    Floor floor = layout.wall().room().floor();
    String rails = "Set the base rails level and pack them solid along their length";
    return floor.isLevel()
        ? rails + "; pad what of them lies under the mats."
        : rails
            + ": "
            + FloorPacking.words(floor, tape)
            + ". Pad what of them lies under the mats.";
  }

  private Block anchors(WallSupport support) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Anchor anchor : support.anchors()) {
      rows.add(
          List.of(
              Cell.marks(List.of(anchor.mark())),
              Cell.of(anchor.member()),
              Cell.of(anchor.into().words()),
              Cell.of(tape.text(tape.snap(anchor.place().x()))),
              Cell.of(tape.text(tape.snap(anchor.place().y()))),
              Cell.of(tape.text(tape.snap(anchor.place().z())))));
    }
    return new Listing(
        new Table(
            "Anchors: where, from the wall's left, from the foot of its face toward you, and up;"
                + " which anchor, and whether the building bears it, is for an engineer",
            List.of("Mark", "Holds", "Into", "Right", "Out", "Up"),
            rows));
  }

  /** Where each tether is held, and how long it is at each angle. */
  private Block tethers(WallSupport support) {
    List<Double> angles = RunAtAngle.angles(layout, 0);
    List<String> columns = new ArrayList<>(List.of("Mark", "What", "On the facet", "Anchored"));
    angles.forEach(angle -> columns.add("at " + Decimal.of(angle, 2) + "°"));
    List<List<Cell>> rows = new ArrayList<>();
    for (Tether tether : support.tethers()) {
      List<Cell> row = new ArrayList<>();
      row.add(Cell.marks(List.of(tether.mark())));
      row.add(Cell.of(tether.task().words()));
      row.add(Cell.of(readings(tether.u(), tether.v())));
      row.add(Cell.of(readings(tether.anchor().x(), tether.anchor().y(), tether.anchor().z())));
      for (double angle : angles) {
        Vector3 held = layout.held(tether, angle);
        row.add(Cell.of(tape.text(tape.snap(held.minus(tether.anchor()).length()))));
      }
      rows.add(row);
    }
    return new Listing(
        new Table(
            "What holds it: across and up the back of the upper facet, counted as on its front;"
                + " right, out and up at the building; and how long it is",
            columns,
            rows));
  }

  private String readings(double... places) {
    return Arrays.stream(places)
        .mapToObj(place -> tape.reading(tape.snap(place)))
        .collect(Collectors.joining(" / "));
  }

  /** What a run takes of the room at each of its angles. */
  private Block envelopes() {
    List<List<Cell>> rows = new ArrayList<>();
    for (int number = 0; number < layout.runs().size(); number++) {
      List<FacetLayout> run = layout.runs().get(number);
      FallZone zone = FallZone.of(layout, run.stream().map(FacetLayout::facet).toList());
      for (double angle : RunAtAngle.angles(layout, number)) {
        List<Vector3> corners =
            RunAtAngle.of(layout, number, angle)
                .corners()
                .map(run.get(0).facet().plane().floorAxes()::fromRoom)
                .toList();
        String name = run.get(run.size() - 1).facet().name();
        boolean swings = RunAtAngle.angles(layout, number).size() > 1;
        rows.add(
            List.of(
                Cell.of(swings ? name + " at " + Decimal.of(angle, 2) + "°" : name),
                Cell.of(extent(corners, Vector3::x)),
                Cell.of(extent(corners, Vector3::y)),
                Cell.of(extent(corners, Vector3::z)),
                Cell.of(tape.text(tape.snapUp(zone.end())))));
      }
    }
    return new Listing(
        new Table(
            "What it takes of the room, and how far from the foot of the face the floor must be"
                + " clear (EN 12572-2:2017 Table 2)",
            List.of("Up to facet", "Width", "Depth", "Height", "Clear to"),
            rows));
  }

  private String extent(List<Vector3> corners, ToDoubleFunction<Vector3> axis) {
    double low = corners.stream().mapToDouble(axis).min().orElse(0);
    double high = corners.stream().mapToDouble(axis).max().orElse(0);
    return tape.text(tape.snapUp(high - low));
  }
}
