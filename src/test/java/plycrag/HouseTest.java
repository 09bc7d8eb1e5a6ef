package plycrag;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.charset.Charset;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.GeometryFactory;
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
    rooms.put("params", with(rooms, "catalog", "catalog", "geometry"));
    rooms.put("wall", with(rooms, "params", "params"));
    rooms.put("read", with(rooms, "wall", "wall"));
    rooms.put("layout.nest", List.of("units", "geometry", "layout.nest.guillotine"));
    rooms.put("layout.nest.guillotine", List.of("units", "geometry"));
    rooms.put("layout.setout", List.of("units", "geometry"));
    rooms.put("layout.support", List.of("units", "geometry"));
    rooms.put("layout.fixing", List.of("units", "geometry", "catalog"));
    rooms.put("layout.scatter", List.of("units", "geometry"));
    rooms.put(
        "layout",
        with(
            rooms,
            "wall",
            "wall",
            "layout.nest",
            "layout.setout",
            "layout.scatter",
            "layout.support",
            "layout.fixing"));
    rooms.put("check.rule", with(rooms, "layout", "layout"));
    rooms.put("check.clearance", with(rooms, "check.rule", "check.rule"));
    rooms.put("check.making", with(rooms, "check.rule", "check.rule"));
    rooms.put("check.standing", with(rooms, "check.rule", "check.rule"));
    rooms.put(
        "check",
        with(
            rooms,
            "check.rule",
            "check.rule",
            "check.clearance",
            "check.making",
            "check.standing"));
    rooms.put("document", List.of("units"));
    rooms.put("stock.cutting", List.of());
    rooms.put("stock", with(rooms, "check", "check", "document", "stock.cutting"));
    rooms.put("machining", with(rooms, "check", "check", "document"));
    rooms.put("machining.replay", List.of("units", "geometry"));
    rooms.put("drawing", with(rooms, "stock", "stock", "machining"));
    rooms.put("book", with(rooms, "drawing", "drawing"));
    for (String format : List.of("csv", "dxf", "svg", "ngc", "html", "json")) {
      rooms.put("files." + format, List.of("units", "document"));
    }
    rooms.put("files.pdf", List.of("units", "document", "geometry"));
    rooms.put("files.lint", List.of("geometry"));
    rooms.put("files.geojson", List.of("units", "document", "files.json"));
    rooms.put("files", List.of("units", "document", "files.json"));
    return rooms;
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
  static final ArchRule NOTHING_STATIC_CHANGES =
      fields()
          .that()
          .areStatic()
          .and()
          .doNotHaveModifier(JavaModifier.SYNTHETIC)
          .should()
          .beFinal();

  @ArchTest
  static final ArchRule ONLY_APP_PRINTS_AND_EXITS =
      noClasses()
          .that()
          .resideOutsideOfPackage("plycrag.app..")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .orShould()
          .callMethod(System.class, "exit", int.class)
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .dependOnClassesThat()
          .areAssignableTo(Clock.class)
          .orShould()
          .callMethod(Locale.class, "getDefault")
          .orShould()
          .callMethod(String.class, "format", String.class, Object[].class)
          .orShould()
          .callMethod(String.class, "formatted", Object[].class)
          .orShould()
          .callMethod(Charset.class, "defaultCharset");

  @ArchTest
  static final ArchRule TRIGONOMETRY_LIVES_IN_GEOMETRY =
      noClasses()
          .that()
          .resideOutsideOfPackage("plycrag.geometry")
          .should()
          .dependOnClassesThat()
          .areAssignableTo(StrictMath.class);

  @ArchTest
  static final ArchRule NOBODY_USES_PLATFORM_TRIGONOMETRY =
      noClasses()
          .should()
          .callMethodWhere(
              DescribedPredicate.describe(
                  "is a transcendental function of Math",
                  (JavaCall<?> call) ->
                      call.getTargetOwner().isEquivalentTo(Math.class)
                          && Set.of(
                                  "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "exp",
                                  "log", "log10", "pow", "cbrt", "hypot")
                              .contains(call.getName())));

  @ArchTest
  static final ArchRule GEOMETRY_IS_MADE_IN_ONE_ROOM =
      noClasses()
          .that()
          .resideOutsideOfPackages("plycrag.geometry")
          .should()
          .dependOnClassesThat()
          .areAssignableTo(GeometryFactory.class);

  @ArchTest
  static final ArchRule THE_WHOLE_RECORD_IS_SEEN_BY_FEW =
      classes()
          .that()
          .areAssignableTo(Parameters.class)
          .should()
          .onlyBeAccessed()
          .byAnyPackage("plycrag.params", "plycrag.read", "plycrag.app..");
}
