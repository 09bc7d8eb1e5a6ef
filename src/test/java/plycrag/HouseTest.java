package plycrag;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import plycrag.read.Parameters;

/** Holds the map of the house: which room may know which, and what only some rooms may do. */
@AnalyzeClasses(packages = "plycrag", importOptions = HouseTest.MainOnly.class)
class HouseTest {
  /** Leaves out what was compiled to the same folder as this test, wherever the build put it. */
  static final class MainOnly implements ImportOption {
    private static final String TESTS =
        HouseTest.class.getProtectionDomain().getCodeSource().getLocation().getPath();

    @Override
    public boolean includes(Location location) {
      return !location.contains(TESTS);
    }
  }

  /** Each room with the rooms it may import; a room may always import itself. */
  private static final Map<String, List<String>> ROOMS = rooms();

  private static Map<String, List<String>> rooms() {
    Map<String, List<String>> rooms = new LinkedHashMap<>();
    rooms.put("units", List.of());
    rooms.put("finding", List.of("units"));
    rooms.put("geometry", List.of("units"));
    rooms.put("catalog", List.of("units", "finding"));
    rooms.put("prices", List.of("units", "catalog"));
    wall(rooms);
    reading(rooms);
    engines(rooms);
    layout(rooms);
    checks(rooms);
    makers(rooms);
    proof(rooms);
    formats(rooms);
    return rooms;
  }

  private static void wall(Map<String, List<String>> rooms) {
    List<String> below = List.of("units", "finding", "catalog", "geometry");
    rooms.put("wall.buying", below);
    rooms.put("wall.machine", below);
    rooms.put("wall.room", and(below, "wall.buying"));
    rooms.put("wall", and(below, "prices", "wall.buying", "wall.machine", "wall.room"));
  }

  private static void reading(Map<String, List<String>> rooms) {
    List<String> values = with(rooms, "wall", "wall");
    rooms.put("read.text", List.of("units", "finding"));
    rooms.put("read.schema", and(values, "read.text"));
    rooms.put("read", and(values, "read.text", "read.schema"));
    rooms.put("read.lists", and(values, "read.text", "read.schema", "read"));
  }

  private static void engines(Map<String, List<String>> rooms) {
    List<String> below = List.of("units", "geometry", "catalog");
    for (String engine :
        List.of(
            "guillotine",
            "setout",
            "scatter",
            "fixing",
            "support",
            "cutting",
            "tour",
            "sparse",
            "timber")) {
      rooms.put("solve." + engine, below);
    }
    rooms.put("solve.nest", and(below, "solve.guillotine"));
    rooms.put("solve.frame", and(below, "solve.sparse"));
  }

  /** A staircase: each room sees only those before it. */
  private static void layout(Map<String, List<String>> rooms) {
    List<String> seen =
        with(
            rooms,
            "wall",
            "wall",
            "solve.nest",
            "solve.setout",
            "solve.scatter",
            "solve.fixing",
            "solve.support");
    for (String step :
        List.of("skin", "frame", "pattern", "screws", "facet", "support", "joints", "sheets")) {
      rooms.put("layout." + step, seen);
      seen = and(seen, "layout." + step);
    }
    rooms.put("layout", seen);
    rooms.put("layout.standing", and(seen, "layout"));
    rooms.put(
        "layout.structure", and(seen, "layout", "layout.standing", "solve.frame", "solve.timber"));
  }

  private static void checks(Map<String, List<String>> rooms) {
    List<String> seen = with(rooms, "layout.standing", "layout.standing");
    rooms.put("check.rule", seen);
    List<String> judges = List.of("check.clearance", "check.making", "check.standing");
    judges.forEach(judge -> rooms.put(judge, and(seen, "check.rule")));
    rooms.put("check.structure", and(seen, "layout.structure", "solve.frame", "solve.timber"));
    rooms.put("check", and(and(seen, judges), "check.rule", "check.structure"));
  }

  private static void makers(Map<String, List<String>> rooms) {
    List<String> seen = with(rooms, "check", "check", "document");
    rooms.put("document", List.of("units"));
    rooms.put("stock", and(seen, "prices", "solve.cutting"));
    rooms.put("lists", seen);
    rooms.put("machining", and(seen, "solve.tour"));
    List<String> shown = and(seen, "prices", "stock", "lists", "machining");
    rooms.put("drawing.pen", shown);
    rooms.put("drawing.flat", and(shown, "drawing.pen"));
    rooms.put("drawing.room", and(shown, "drawing.pen"));
    rooms.put("drawing.template", and(shown, "drawing.pen", "drawing.flat"));
    List<String> views = List.of("drawing.pen", "drawing.flat", "drawing.room", "drawing.template");
    rooms.put("drawing", and(shown, views));
    rooms.put("book", and(rooms.get("drawing"), "drawing"));
  }

  /** Shares no code with what it checks: neither {@code machining} nor {@code files}. */
  private static void proof(Map<String, List<String>> rooms) {
    rooms.put("proof.replay", List.of("units", "geometry"));
    rooms.put("proof", and(with(rooms, "layout", "layout", "document"), "proof.replay"));
  }

  private static void formats(Map<String, List<String>> rooms) {
    for (String format : List.of("csv", "dxf", "svg", "ngc", "html", "json")) {
      rooms.put("files." + format, List.of("units", "document"));
    }
    rooms.put("files.pdf", List.of("units", "document", "geometry"));
    rooms.put("files.lint", List.of("geometry"));
    rooms.put("files.geojson", List.of("units", "document", "files.json"));
    rooms.put("files.gltf", List.of("units", "document", "files.json"));
    rooms.put(
        "files.space", List.of("units", "document", "files.json", "files.gltf", "files.html"));
    rooms.put("files", List.of("units", "document", "files.json"));
  }

  private static List<String> and(List<String> rooms, String... more) {
    return and(rooms, List.of(more));
  }

  private static List<String> and(List<String> rooms, List<String> more) {
    List<String> all = new ArrayList<>(rooms);
    all.addAll(more);
    return all;
  }

  private static List<String> with(Map<String, List<String>> rooms, String base, String... more) {
    List<String> all = new ArrayList<>(rooms.get(base));
    all.addAll(List.of(more));
    return all;
  }

  @ArchTest
  static void everyRoomKnowsOnlyItsOwn(JavaClasses classes) {
    Set<String> seen = new TreeSet<>();
    classes.forEach(one -> seen.add(one.getPackageName()));
    seen.removeIf(name -> name.equals("plycrag") || name.startsWith("plycrag.app"));
    for (String name : seen) {
      String room = name.substring("plycrag.".length());
      assertThat(ROOMS).as("a room that the map does not know").containsKey(room);
      noClasses()
          .that()
          .resideInAPackage(name)
          .should()
          .dependOnClassesThat(outside(room))
          .check(classes);
    }
  }

  private static DescribedPredicate<com.tngtech.archunit.core.domain.JavaClass> outside(
      String room) {
    List<String> allowed = new ArrayList<>(ROOMS.get(room));
    allowed.add(room);
    return DescribedPredicate.describe(
        "lie outside " + allowed,
        other ->
            other.getPackageName().startsWith("plycrag.")
                && !allowed.contains(other.getPackageName().substring("plycrag.".length())));
  }

  @ArchTest
  static final ArchRule NO_CYCLES = slices().matching("plycrag.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule THE_WHOLE_RECORD_IS_SEEN_BY_FEW =
      classes()
          .that()
          .areAssignableTo(Parameters.class)
          .should()
          .onlyBeAccessed()
          .byAnyPackage("plycrag.read..", "plycrag.app..");
}
