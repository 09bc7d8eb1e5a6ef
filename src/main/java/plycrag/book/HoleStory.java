package plycrag.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.Shapes;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.pattern.Hindrance;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.InsertHindrances;
import plycrag.layout.pattern.Obstacle;
import plycrag.layout.pattern.Omission;
import plycrag.layout.pattern.Screw;
import plycrag.units.NearestWord;
import plycrag.units.Tape;

/**
 * Tells why one hole is where it is, or is missing: what stands nearest, and what would free it.
 */
public final class HoleStory {
  private static final Pattern READING = Pattern.compile("(.*\\S)\\s+([0-9]+)/([0-9]+)");

  private final Layout layout;
  private final FacetLayout facet;
  private final Tape tape;
  private final List<String> lines = new ArrayList<>();

  private HoleStory(Layout layout, FacetLayout facet) {
    this.layout = layout;
    this.facet = facet;
    this.tape = layout.wall().tape();
  }

  /**
   * The story of a hole, line by line; empty if its mark names no facet of the wall.
   *
   * @param mark a facet's name and what a tape reads at the hole's centre: {@code main 40/10}
   */
  public static List<String> of(Layout layout, String mark) {
    Matcher reading = READING.matcher(mark.strip());
    if (!reading.matches()) {
      return List.of();
    }
    return layout.facets().stream()
        .filter(one -> one.facet().name().equalsIgnoreCase(reading.group(1)))
        .findFirst()
        .map(one -> new HoleStory(layout, one).told(reading))
        .orElse(List.of());
  }

  /** The facet that was probably meant, if none is called so. */
  public static Optional<String> nearestFacet(Layout layout, String mark) {
    List<String> names = layout.facets().stream().map(one -> one.facet().name()).toList();
    return NearestWord.find(mark.strip().replaceAll("\\s*[0-9]*/?[0-9]*$", ""), names);
  }

  private List<String> told(Matcher reading) {
    String mark = facet.facet().name() + " " + reading.group(2) + "/" + reading.group(3);
    Optional<Insert> there =
        facet.inserts().stream().filter(one -> one.mark().equals(mark)).findFirst();
    Optional<Omission> lost =
        facet.omissions().stream().filter(one -> one.insert().mark().equals(mark)).findFirst();
    if (there.isPresent()) {
      tellThere(there.get());
    } else if (lost.isPresent()) {
      lines.add(mark + " is left out: " + lost.get().reason() + ".");
      tellAround(lost.get().insert());
    } else {
      tellNone(mark, place(reading));
    }
    return List.copyOf(lines);
  }

  private Point place(Matcher reading) {
    double division = tape.unit().tapeDivision();
    return Shapes.point(
        Integer.parseInt(reading.group(2)) * division,
        Integer.parseInt(reading.group(3)) * division);
  }

  private void tellThere(Insert insert) {
    String where =
        insert.column() > 0 ? ", column " + insert.column() + ", row " + insert.row() : "";
    lines.add(insert.mark() + " is there, at " + reading(insert.centre()) + where + ".");
    long before = lines.size();
    moves(insert).forEach(lines::add);
    if (insert.column() > 0 && lines.size() == before) {
      lines.add("It stands where it was asked for.");
    }
    tellAround(insert);
  }

  /** What set-out tells of its column and its row. */
  private Stream<String> moves(Insert insert) {
    String pattern =
        insert.counted().isEmpty() ? "" : insert.counted().replaceFirst("^zone", "Zone") + ": ";
    List<String> begins =
        List.of(pattern + "Column " + insert.column() + ",", pattern + "Row " + insert.row() + ",");
    return SettingOut.of(layout).stream()
        .filter(told -> told.facet().equals(facet.facet().name()))
        .flatMap(told -> told.lines().stream())
        .filter(line -> begins.stream().anyMatch(line::startsWith));
  }

  private void tellNone(String mark, Point place) {
    lines.add("No insert is asked for at " + mark + ".");
    nearest(facet.inserts(), one -> one.centre().distance(place))
        .ifPresent(
            insert ->
                lines.add(
                    "The nearest is "
                        + insert.mark()
                        + ", "
                        + tape.text(insert.centre().distance(place))
                        + " away."));
    tellAround(new Insert("there", place, 0, 0, ""));
  }

  /** What is too near with what would free it, or else what stands nearest. */
  private void tellAround(Insert insert) {
    boolean isClear = true;
    for (Hindrance hindrance : InsertHindrances.ALL) {
      for (Obstacle obstacle : facet.surroundings().of(hindrance, insert.centre())) {
        isClear = false;
        String remedy = hindrance.remedy(insert, obstacle, facet.facet(), tape);
        lines.add("In its way: " + hindrance.sentence(insert, obstacle, tape) + ".");
        lines.add("What would free it: " + remedy + ".");
      }
    }
    if (isClear) {
      lines.add("Nothing but other inserts could be in its way there.");
    }
    tellNearest(insert.centre());
  }

  private void tellNearest(Point place) {
    double flange = layout.wall().inserts().body().flange() / 2;
    nearest(facet.members(), one -> one.footprint().distance(place))
        .ifPresent(one -> lines.add(nearest(named(one), one.footprint().distance(place) - flange)));
    nearest(
            facet.inserts().stream().filter(one -> one.centre().distance(place) > 0).toList(),
            one -> one.centre().distance(place))
        .ifPresent(
            one ->
                lines.add(
                    nearest("insert " + one.mark(), one.centre().distance(place) - 2 * flange)));
    nearest(facet.screws(), one -> one.centre().distance(place))
        .map(Screw::centre)
        .ifPresent(one -> lines.add(nearest("screw", one.distance(place) - flange)));
    double edge = facet.facet().outline().getBoundary().distance(place);
    lines.add("From its centre to the facet's edge: " + tape.text(edge) + ".");
  }

  private static String named(Member member) {
    return member.role().word() + " " + member.mark();
  }

  private String nearest(String thing, double distance) {
    return distance < 0
        ? "Its flange lies over " + thing + " by " + tape.text(-distance) + "."
        : "From its flange to the nearest " + thing + ": " + tape.text(distance) + ".";
  }

  private static <T> Optional<T> nearest(List<T> things, ToDoubleFunction<T> distance) {
    return things.stream().min(Comparator.comparingDouble(distance));
  }

  private String reading(Point place) {
    return tape.text(place.getX()) + " across and " + tape.text(place.getY()) + " up";
  }
}
