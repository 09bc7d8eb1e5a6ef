package plycrag.solve.fixing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plycrag.catalog.FlatSteel;
import plycrag.catalog.FlatSteel.Shape;
import plycrag.catalog.ScrewCatalog;
import plycrag.catalog.SoldScrew;
import plycrag.catalog.SoldScrew.Use;
import plycrag.catalog.SteelCatalog;
import plycrag.geometry.Tolerance;

/**
 * Chooses a bracket or a strap for two faces.
 *
 * <p>Its screws keep the distances of predrilled timber (EN 1995-1-1:2004 Table 8.2; between each
 * other those of steel on timber, 8.3.1.4). A bracket hands on what people make on the face, which
 * lies across the grain of both members; a strap holds along itself. The thickest screws for which
 * there is a piece are chosen, and of the pieces the smallest.
 */
public final class SteelPlan {
  /** The angle of a bracket as it is sold, and how far off it goes without bending, degrees. */
  private static final double SQUARE = 90;

  /** Steel thicker than this is not bent on site, mm (common practice, no source). */
  private static final double BENDABLE = 2;

  private static final double OFF_SQUARE = 2;

  /**
   * Between these a bracket may be bent: where it is closed further no driver comes between its
   * legs, and opened further it holds little (common practice, no source), degrees.
   */
  private static final double CLOSED = 60;

  private static final double OPEN = 150;

  /** Screws for brackets are no thinner, mm. */
  public static final double THINNEST = 3;

  private static final double STEP = 0.1;
  private static final double LONGEST = 200;

  private final SteelCatalog catalog;
  private final Shape shape;
  private final int screws;
  private final boolean inches;
  private final double deep;
  private final double farSide;
  private final Predicate<SteelPlace> isFree;

  /**
   * @param catalog what may be taken
   * @param shape what is wanted
   * @param screws in both legs together
   * @param inches whether screws have numbers
   * @param deep how deep a screw must go in, in diameters
   * @param farSide what must remain before the far side, mm
   * @param isFree whether nothing but timber is where a piece or its screws would be
   */
  public SteelPlan(
      SteelCatalog catalog,
      Shape shape,
      int screws,
      boolean inches,
      double deep,
      double farSide,
      Predicate<SteelPlace> isFree) {
    this.catalog = catalog;
    this.shape = shape;
    this.screws = screws;
    this.inches = inches;
    this.deep = deep;
    this.farSide = farSide;
    this.isFree = isFree;
  }

  /** One where a member ends on another. */
  public SteelChoice onCorner(TimberBody first, TimberBody second, List<TimberBody> others) {
    return choose(SteelSeat.corners(first, second, others), search()::one);
  }

  /**
   * So many, evenly apart, where two members lie along each other and only their edges come near.
   */
  public SteelChoice onEdges(
      TimberBody first, TimberBody second, List<TimberBody> others, int count) {
    return choose(
        SteelSeat.edges(first, second, others),
        (steel, seats) -> search().row(steel, seats, count));
  }

  /** One where two members meet end to end. */
  public SteelChoice onFlush(TimberBody first, TimberBody second, List<TimberBody> others) {
    return choose(SteelSeat.flush(first, second, others), search()::one);
  }

  /** The same on two sides; their screws pass each other. */
  public SteelChoice onBothSides(TimberBody first, TimberBody second, List<TimberBody> others) {
    return choose(SteelSeat.flush(first, second, others), search()::pair);
  }

  /**
   * Hinges, whose leaves lie across the timber: by its breadth alone.
   *
   * @param crease on which they lie
   * @param count how many, evenly apart
   * @param breadth mm
   * @param timber that the screws find, mm
   * @param between the steel and the timber, mm
   */
  public SteelChoice onCrease(
      Crease crease,
      TimberBody first,
      TimberBody second,
      int count,
      double breadth,
      double timber,
      double between) {
    for (FlatSteel steel : catalog.of(shape)) {
      Optional<SteelFit> fit =
          Tolerance.atMost(steel.legs().length(), breadth)
              ? fit(steel, timber, between, SQUARE)
              : Optional.empty();
      List<SteelSearch.Placed> row =
          fit.map(
                  one ->
                      new SteelSearch(isFree, (any, seat) -> fit)
                          .row(steel, List.of(crease.seat(first, second, breadth)), count))
              .orElse(List.of());
      if (!row.isEmpty()) {
        return chosen(row);
      }
    }
    return new SteelChoice(Optional.empty(), List.of(), Optional.empty(), Optional.empty());
  }

  private SteelSearch search() {
    return new SteelSearch(isFree, this::fit);
  }

  private SteelChoice choose(
      List<SteelSeat> all, BiFunction<FlatSteel, List<SteelSeat>, List<SteelSearch.Placed>> find) {
    List<SteelSeat> seats =
        all.stream()
            .filter(seat -> shape != Shape.ANGLE || isBent(seat, CLOSED, OPEN))
            .sorted(Comparator.comparingDouble(seat -> Math.abs(seat.angle() - SQUARE)))
            .toList();
    return catalog.of(shape).stream()
        .filter(this::isEnough)
        .map(steel -> find.apply(steel, seats))
        .filter(placed -> !placed.isEmpty())
        .findFirst()
        .map(SteelPlan::chosen)
        .orElseGet(() -> new SteelChoice(Optional.empty(), List.of(), widest(seats), closed(all)));
  }

  private static SteelChoice chosen(List<SteelSearch.Placed> placed) {
    return new SteelChoice(
        Optional.of(placed.get(0).fit()),
        placed.stream().map(SteelSearch.Placed::place).toList(),
        Optional.empty(),
        Optional.empty());
  }

  private Optional<SteelChoice.Room> widest(List<SteelSeat> seats) {
    return seats.stream()
        .map(this::room)
        .max(Comparator.comparingDouble(one -> Math.min(one.leg(), 10 * one.diameter())));
  }

  private Optional<Double> closed(List<SteelSeat> all) {
    boolean isClosed = shape == Shape.ANGLE && all.stream().allMatch(seat -> seat.angle() < CLOSED);
    return isClosed ? all.stream().map(SteelSeat::angle).max(Double::compare) : Optional.empty();
  }

  private static boolean isBent(SteelSeat seat, double least, double most) {
    return seat.angle() >= least && seat.angle() <= most;
  }

  private boolean isEnough(FlatSteel steel) {
    return steel.holes().count() >= inLeg();
  }

  private int inLeg() {
    return (screws + 1) / 2;
  }

  private Optional<SteelFit> fit(FlatSteel steel, SteelSeat seat) {
    boolean asSold = shape != Shape.ANGLE || isBent(seat, SQUARE - OFF_SQUARE, SQUARE + OFF_SQUARE);
    boolean fits =
        (asSold || Tolerance.atMost(steel.legs().thickness(), BENDABLE))
            && Tolerance.atMost(steel.legs().width(), seat.breadth())
            && Stream.of(seat.one(), seat.other()).allMatch(leg -> holds(steel, leg, seat))
            && seat.hasRoom(
                steel.legs().width(),
                steel.legs().length(),
                Tolerance.RECKONING); // asks all timber around: last
    double timber =
        fits
            ? Stream.of(seat.one(), seat.other())
                .flatMap(leg -> holes(steel, seat).map(leg::timber))
                .min(Comparator.naturalOrder())
                .orElse(0.0)
            : 0;
    return fits ? fit(steel, timber, 0, angle(seat, asSold)) : Optional.empty();
  }

  /** To a tenth of a degree. */
  private double angle(SteelSeat seat, boolean asSold) {
    return asSold && shape == Shape.ANGLE ? SQUARE : Math.round(seat.angle() * 10) / 10.0;
  }

  private double diameter(FlatSteel steel) {
    return inches ? steel.screws().inch() : steel.screws().metric();
  }

  private Optional<SteelFit> fit(FlatSteel steel, double timber, double between, double angle) {
    double diameter = diameter(steel);
    double outside = steel.legs().thickness() + between;
    return ScrewCatalog.shortest(
            Use.BRACKET, diameter, outside + deep * diameter, outside + timber - farSide)
        .map(SoldScrew::length)
        .map(length -> new SteelFit(steel, angle, taken(steel), diameter, length));
  }

  /** Every hole of a hinge takes one. */
  private int taken(FlatSteel steel) {
    return shape == Shape.HINGE ? 2 * steel.holes().count() : screws;
  }

  /** The outermost holes of a leg. */
  private Stream<FacePlace> holes(FlatSteel steel, SteelSeat seat) {
    double half = steel.holes().gauge() / 2;
    return Stream.of(steel.holes().first(), steel.last(inLeg()))
        .flatMap(
            along ->
                Stream.of(
                    new FacePlace(along, seat.middle() - half),
                    new FacePlace(along, seat.middle() + half)));
  }

  /** Of the angle between what is handed on and the grain under a leg. */
  private double sine(FlatFace face) {
    return shape == Shape.ANGLE ? 1 : Math.abs(face.grain().across());
  }

  private double cosine(FlatFace face) {
    return shape == Shape.ANGLE ? 0 : Math.abs(face.grain().along());
  }

  private boolean holds(FlatSteel steel, Leg leg, SteelSeat seat) {
    ScrewDistances distances = new ScrewDistances(diameter(steel), true);
    FlatFace face = leg.flat();
    double side = distances.loadedEdge(sine(face));
    double end = distances.loadedEnd(cosine(face));
    return holes(steel, seat).allMatch(hole -> Tolerance.atLeast(face.slack(hole, side, end), 0))
        && areApart(steel, face, distances);
  }

  private boolean areApart(FlatSteel steel, FlatFace face, ScrewDistances distances) {
    double along = ScrewDistances.STEEL_ON_TIMBER * distances.alongGrain(cosine(face));
    double across = ScrewDistances.STEEL_ON_TIMBER * distances.acrossGrain(sine(face));
    boolean withGrain = Math.abs(face.grain().along()) > Math.abs(face.grain().across());
    double pitch = withGrain ? along : across;
    double gauge = withGrain ? across : along;
    boolean oneRow = inLeg() <= steel.holes().lines();
    return (oneRow || Tolerance.atLeast(steel.holes().pitch(), pitch))
        && (steel.holes().lines() == 1 || Tolerance.atLeast(steel.holes().gauge(), gauge));
  }

  /** What would fit where nothing of the catalogue does: one line of the thickest screws. */
  private SteelChoice.Room room(SteelSeat seat) {
    double leg = Math.min(LONGEST, seat.room(Math.min(seat.breadth(), 20)));
    double diameter =
        IntStream.iterate(
                (int) Math.round(5 / STEP),
                tenths -> Tolerance.atLeast(tenths * STEP, THINNEST),
                tenths -> tenths - 1)
            .mapToDouble(tenths -> tenths * STEP)
            .filter(one -> isThinEnough(one, seat))
            .findFirst()
            .orElse(0);
    ScrewDistances distances = new ScrewDistances(diameter, true);
    FlatFace face = seat.one().flat();
    double first = distances.loadedEnd(cosine(face));
    double pitch = ScrewDistances.STEEL_ON_TIMBER * distances.alongGrain(cosine(face));
    double rest = leg - first - 2 * diameter;
    int count = diameter > 0 && rest >= 0 ? 2 * (1 + (int) Tolerance.wholeDown(rest / pitch)) : 0;
    return new SteelChoice.Room(seat.breadth(), leg, diameter, first, count);
  }

  private boolean isThinEnough(double diameter, SteelSeat seat) {
    ScrewDistances distances = new ScrewDistances(diameter, true);
    FacePlace hole = new FacePlace(distances.loadedEnd(cosine(seat.one().flat())), seat.middle());
    return Stream.of(seat.one(), seat.other())
        .allMatch(
            leg ->
                keeps(hole, leg, distances)
                    && Tolerance.atLeast(leg.timber(hole) - farSide, deep * diameter));
  }

  private boolean keeps(FacePlace hole, Leg leg, ScrewDistances distances) {
    FlatFace face = leg.flat();
    double side = distances.loadedEdge(sine(face));
    double end = distances.loadedEnd(cosine(face));
    return Tolerance.atLeast(face.slack(hole, side, end), 0);
  }
}
