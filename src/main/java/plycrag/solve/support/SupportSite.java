package plycrag.solve.support;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.units.Tape;

/**
 * What a support is set for.
 *
 * @param axes where the run stands
 * @param backs the backs of its facets' frames, from the floor up
 * @param studs left sides of the studs that may bear, x of the run, ascending, mm
 * @param timber how thick and how deep it is
 * @param bay the greatest distance between stations, mm
 * @param longest a timber may be, mm
 * @param tape on whose marking grid what is level lies
 */
public record SupportSite(
    FloorAxes axes,
    List<BackEdge> backs,
    List<Double> studs,
    Timber timber,
    double bay,
    double longest,
    Tape tape) {
  /** What is less out of line bears all the same, mm. */
  private static final double IN_LINE = 1;

  /** So far below a plate reaches what holds it to a stud (a choice), mm. */
  private static final double UNDER_PLATE = 120;

  /** They leave less than a thousandth of a millimetre of any bay. */
  private static final int HALVINGS = 24;

  /** Copies the lists. */
  public SupportSite {
    backs = List.copyOf(backs);
    studs = List.copyOf(studs);
  }

  /**
   * How thick and how deep timber is, mm.
   *
   * @param breadth along the wall, of all but ledgers
   * @param frame depth of the frame
   * @param rail how high rails are
   * @param post depth of posts
   * @param tie depth of ties and hangers
   * @param brace depth of braces and knee braces
   * @param ledger how far ledgers stand off the building
   * @param ledgerDepth their other side
   */
  public record Timber(
      double breadth,
      double frame,
      double rail,
      double post,
      double tie,
      double brace,
      double ledger,
      double ledgerDepth) {
    /** How far below a frame's upper end, along its back, a tie's middle is where it may be, mm. */
    public double wishedDown() {
      return breadth + UNDER_PLATE + tie / 2;
    }
  }

  double breadth() {
    return timber.breadth();
  }

  /** Of the frame, mm. */
  double depth() {
    return timber.frame();
  }

  /**
   * Left sides of the stations: the outer studs and as few between as keep the distance, of those
   * as evenly apart as the studs allow.
   */
  public List<Double> stations() {
    return evenly(studs);
  }

  /**
   * Where what need not stand in line with the rest meets one facet: at the stations, or where its
   * studs do not stand in line with them, at stations of its own.
   */
  List<Double> stations(BackEdge back) {
    List<Double> stations = stations();
    boolean inLine =
        stations.stream().allMatch(x -> back.studs().stream().anyMatch(stud -> near(stud, x)));
    return inLine || back.studs().isEmpty() ? stations : evenly(back.studs());
  }

  /**
   * Where something meets a frame too low for plywood and for what holds its plates: within the
   * outer studs, at whose plates' ends nothing else has room.
   */
  List<Double> innerStations(BackEdge back) {
    List<Double> all = back.studs();
    List<Double> inner =
        back.clear().stream()
            .filter(stud -> all.indexOf(stud) > 0 && all.indexOf(stud) < all.size() - 1)
            .toList();
    return inner.size() < 2 || Tolerance.isMore(widest(inner), bay)
        ? stations(back)
        : evenly(inner);
  }

  /** The same with other backs. */
  public SupportSite with(List<BackEdge> others) {
    return new SupportSite(axes, others, studs, timber, bay, longest, tape);
  }

  private static boolean near(double one, double other) {
    return Math.abs(one - other) < IN_LINE;
  }

  /** The widest bay between stations of the run or of one of its facets, mm. */
  public double widestBay() {
    return Stream.concat(Stream.of(stations()), backs.stream().map(this::stations))
        .mapToDouble(SupportSite::widest)
        .max()
        .orElse(0);
  }

  /** The greatest distance between neighbours in an ascending list; 0 where there are none. */
  public static double widest(List<Double> places) {
    return IntStream.range(1, places.size())
        .mapToDouble(at -> places.get(at) - places.get(at - 1))
        .max()
        .orElse(0);
  }

  private List<Double> evenly(List<Double> bearing) {
    int fewest = stations(bearing, bay).size();
    double low = 0;
    double high = bay;
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (low + high) / 2;
      if (stations(bearing, middle).size() == fewest) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return stations(bearing, high);
  }

  /** As few as keep a distance, each as far on as it may be. */
  private List<Double> stations(List<Double> bearing, double apart) {
    List<Double> stations = new ArrayList<>();
    for (int at = 0; at < bearing.size(); at++) {
      boolean last = at == bearing.size() - 1;
      double reached =
          stations.isEmpty() ? Double.NEGATIVE_INFINITY : stations.get(stations.size() - 1);
      boolean nextTooFar = !last && Tolerance.isMore(bearing.get(at + 1) - reached, apart);
      boolean beside = Tolerance.isLess(bearing.get(at) - reached, breadth());
      if (!beside && (last || nextTooFar)) {
        stations.add(bearing.get(at));
      }
    }
    return stations;
  }

  /**
   * The top of what is level and ends on a frame: below what holds the plate over it to the studs,
   * or in the middle of a frame too low for that.
   */
  double level(BackEdge back) {
    double down = Math.min(timber.wishedDown() + back.lower(), back.length() / 2);
    return tape.snapDown(back.high().z() - down * back.rise() / back.length() + timber.tie() / 2);
  }

  /**
   * How high the upper end of a frame that leans as much must be for what is level and ends on it
   * to reach a height: a frame too low for the plate grows by twice of what that rises.
   */
  double edgeFor(BackEdge back, double level) {
    double middle = tape.snapUp(level) - timber.tie() / 2;
    double rise = middle - back.low().z();
    double under = (timber.wishedDown() + back.lower()) * back.rise() / back.length();
    return middle + Math.min(rise, under);
  }

  /** Where something upright that ends on a frame has its front, y in mm. */
  double upright(BackEdge back) {
    double under = Math.min(breadth() + UNDER_PLATE + back.lower(), back.length() / 2);
    return back.high().y() - under * back.run() / back.length();
  }

  /** The hindmost place of the frames, y in mm. */
  public double hindmost() {
    return backs.stream()
        .mapToDouble(back -> Math.min(back.low().y(), back.high().y()))
        .min()
        .orElse(0);
  }

  /** The plane of a station: u toward the climber, v up, behind it to the right. */
  FacetPlane station(double x) {
    return new FacetPlane(0, 0, 0, 0, axes.next(x, 0, 90));
  }

  /** An upright plane along the wall: u to the right, v up, behind it away from the climber. */
  FacetPlane along(double y) {
    return new FacetPlane(0, 0, y, 0, axes);
  }

  /** A timber of a station, cut square. */
  SupportTimber box(
      TimberUse use, double x, Direction way, double rear, double low, double front, double high) {
    return timber(
        use,
        x,
        way,
        List.of(
            new SectionPlace(rear, low),
            new SectionPlace(front, low),
            new SectionPlace(front, high),
            new SectionPlace(rear, high)));
  }

  /** A timber of a station. */
  SupportTimber timber(TimberUse use, double x, Direction direction, List<SectionPlace> corners) {
    return new SupportTimber(use, station(x), direction, outline(corners), breadth());
  }

  /**
   * Level timber along the wall, from the first of some stations to the last, in as few lengths as
   * there are; where one ends and the next begins both bear on the middle of a station.
   *
   * @param stations those that end on it, left sides, ascending, mm
   * @param use what for
   * @param y of its face toward the climber, mm
   * @param low its underside, mm
   * @param high its top, mm
   * @param depth how far it reaches behind that face, mm
   */
  List<SupportTimber> along(
      TimberUse use, List<Double> stations, double y, double low, double high, double depth) {
    return along(use, over(stations), stations, y, low, high, depth);
  }

  /** From the outer side of the first station to that of the last. */
  Span over(List<Double> stations) {
    return new Span(stations.get(0), stations.get(stations.size() - 1) + breadth());
  }

  /**
   * The same with ends beyond the outer stations.
   *
   * @param ends from where to where, mm
   */
  List<SupportTimber> along(
      TimberUse use,
      Span ends,
      List<Double> stations,
      double y,
      double low,
      double high,
      double depth) {
    double end = ends.high();
    List<SupportTimber> timbers = new ArrayList<>();
    double from = ends.low();
    while (Tolerance.isLess(from, end)) {
      double to = end - from <= longest ? end : joint(from, stations).orElse(end);
      Polygon outline = Shapes.rectangle(from, low, to, high);
      timbers.add(new SupportTimber(use, along(y), Direction.LEVEL, outline, depth));
      from = to;
    }
    return timbers;
  }

  /** The last station's middle that a timber from here reaches. */
  private OptionalDouble joint(double from, List<Double> stations) {
    return stations.stream()
        .mapToDouble(x -> x + breadth() / 2)
        .filter(middle -> middle > from + breadth() && middle - from <= longest)
        .max();
  }

  /** The one of some ledgers that a station ends on. */
  SupportTimber under(double x, List<SupportTimber> ledgers) {
    return ledgers.stream()
        .filter(ledger -> Tolerance.isMore(ledger.outline().getEnvelopeInternal().getMaxX(), x))
        .findFirst()
        .orElseThrow();
  }

  /** A straight-sided area from its corners. */
  static Polygon outline(List<SectionPlace> corners) {
    return Shapes.polygon(
        corners.stream().map(corner -> new Coordinate(corner.y(), corner.z())).toList());
  }

  /** A level timber of a station that ends flat on the back of a frame. */
  SupportTimber tie(double x, double from, BackEdge back, double high) {
    double low = high - timber.tie();
    return timber(
        TimberUse.TIE,
        x,
        Direction.LEVEL,
        List.of(
            new SectionPlace(from, low),
            new SectionPlace(back.y(low), low),
            new SectionPlace(back.y(high), high),
            new SectionPlace(from, high)));
  }

  /** Where such a tie meets the frame. */
  Meeting onFrame(SupportTimber tie, BackEdge back, double high) {
    double middle = high - timber.tie() / 2;
    return Meeting.frame(tie, back.facet(), new SectionPlace(back.y(middle), middle), timber.tie());
  }
}
