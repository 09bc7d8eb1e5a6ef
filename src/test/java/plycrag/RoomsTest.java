package plycrag;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Keeps rooms small enough to find one's way in, and their doors closed. */
@AnalyzeClasses(packages = "plycrag", importOptions = HouseTest.MainOnly.class)
class RoomsTest {
  private static final int MOST_CLASSES = 50;
  private static final int LARGEST_RING = 8;

  /** What is named from outside the program, or by tests that look at the program as a whole. */
  private static final Set<String> DOORS =
      Set.of(
          "plycrag.app.Main",
          "plycrag.app.Plycrag",
          "plycrag.app.Design",
          "plycrag.app.Deliverable",
          "plycrag.files.lint.DxfTags",
          "plycrag.solve.cutting.CuttingPlanner");

  /** Of these others read constants alone, which the compiler copies into what reads them. */
  private static final Set<String> READ_FOR_CONSTANTS =
      Set.of("plycrag.stock.UnitMass", "plycrag.layout.structure.SelfWeight");

  /** Formulas that were made ahead of those that are to use them; none that somebody uses. */
  private static final Set<String> AHEAD =
      Set.of(
          "plycrag.solve.timber.AcrossGrainBearing",
          "plycrag.solve.timber.BiaxialBending",
          "plycrag.solve.timber.CreptDeflection",
          "plycrag.solve.timber.GrainSplitting",
          "plycrag.solve.timber.NotchedEnd",
          "plycrag.solve.timber.RopeEffect",
          "plycrag.solve.timber.ScrewPull",
          "plycrag.solve.timber.SteelShear");

  @ArchTest
  static void whatIsAheadIsUsedByNobody(JavaClasses classes) {
    AHEAD.forEach(
        name ->
            assertThat(
                    whole(classes)
                        .filter(one -> one.getName().equals(name))
                        .flatMap(one -> users(one).filter(user -> !sameRoom(one, user))))
                .as("no longer ahead: " + name)
                .isEmpty());
  }

  @ArchTest
  static void noRoomIsTooLarge(JavaClasses classes) {
    Map<String, List<JavaClass>> rooms =
        whole(classes).collect(Collectors.groupingBy(JavaClass::getPackageName));
    rooms.forEach((room, its) -> assertThat(its).as(room).hasSizeLessThanOrEqualTo(MOST_CLASSES));
  }

  /** A room's contract is no class, though some compilers make one of it. */
  private static boolean isContract(JavaClass one) {
    return one.getSimpleName().equals("package-info");
  }

  @ArchTest
  static void noNameStandsForTwoThings(JavaClasses classes) {
    Map<String, List<String>> names = new TreeMap<>();
    whole(classes)
        .filter(one -> !isContract(one))
        .forEach(
            one ->
                names
                    .computeIfAbsent(one.getSimpleName(), name -> new ArrayList<>())
                    .add(one.getName()));
    names.values().removeIf(places -> places.size() == 1);
    assertThat(names).isEmpty();
  }

  @ArchTest
  static void whatIsPublicIsNamedFromAnotherRoom(JavaClasses classes) {
    Set<String> closed = new TreeSet<>();
    whole(classes)
        .filter(one -> one.getModifiers().contains(JavaModifier.PUBLIC))
        .filter(one -> !DOORS.contains(one.getName()))
        .filter(one -> !READ_FOR_CONSTANTS.contains(one.getName()))
        .filter(one -> !AHEAD.contains(one.getName()))
        .filter(one -> users(one).allMatch(user -> sameRoom(one, user)))
        .forEach(one -> closed.add(one.getName()));
    assertThat(closed).as("public, and no other room names them").isEmpty();
  }

  private static Stream<JavaClass> users(JavaClass one) {
    return Stream.concat(
            Stream.of(one),
            one.getPackage().getClasses().stream().filter(inner -> isIn(inner, one)))
        .flatMap(part -> part.getDirectDependenciesToSelf().stream())
        .map(Dependency::getOriginClass);
  }

  private static boolean isIn(JavaClass inner, JavaClass one) {
    return inner.getName().startsWith(one.getName() + "$");
  }

  private static boolean sameRoom(JavaClass one, JavaClass other) {
    return one.getPackageName().equals(other.getPackageName());
  }

  /** A sealed interface and its kinds need each other, and are read as one. */
  @ArchTest
  static void noRingOfClassesIsLarge(JavaClasses classes) {
    Map<String, Set<String>> needs = new TreeMap<>();
    Set<String> sealed = new TreeSet<>();
    for (JavaClass one : classes) {
      sealed.addAll(sealedKinds(one));
      for (Dependency need : one.getDirectDependenciesFromSelf()) {
        if (sameRoom(one, need.getTargetClass())) {
          needs.computeIfAbsent(top(one), name -> new TreeSet<>()).add(top(need.getTargetClass()));
        }
      }
    }
    for (Set<String> ring : new Rings(needs).all()) {
      ring.removeAll(sealed);
      assertThat(ring).as("a ring of classes").hasSizeLessThanOrEqualTo(LARGEST_RING);
    }
  }

  private static Set<String> sealedKinds(JavaClass one) {
    Class<?> type = one.reflect();
    if (!type.isSealed() || type.getEnclosingClass() != null) {
      return Set.of();
    }
    return Stream.concat(Stream.of(type), Stream.of(type.getPermittedSubclasses()))
        .map(Class::getName)
        .collect(Collectors.toSet());
  }

  private static Stream<JavaClass> whole(JavaClasses classes) {
    return classes.stream().filter(JavaClass::isTopLevelClass);
  }

  private static String top(JavaClass one) {
    String name = one.getName().replace("[L", "").replaceAll("[\\[;]", "");
    int inner = name.indexOf('$');
    return inner < 0 ? name : name.substring(0, inner);
  }

  /** The strongly connected parts of a graph, by R. Tarjan (SIAM J. Comput. 1(2), 1972). */
  private static final class Rings {
    private final Map<String, Set<String>> needs;
    private final Map<String, Integer> order = new HashMap<>();
    private final Map<String, Integer> low = new HashMap<>();
    private final List<String> open = new ArrayList<>();
    private final List<Set<String>> all = new ArrayList<>();

    Rings(Map<String, Set<String>> needs) {
      this.needs = needs;
    }

    List<Set<String>> all() {
      needs.keySet().stream().filter(one -> !order.containsKey(one)).forEach(this::visit);
      return all;
    }

    private void visit(String one) {
      order.put(one, order.size());
      low.put(one, order.get(one));
      open.add(one);
      for (String next : needs.getOrDefault(one, Set.of())) {
        if (!order.containsKey(next)) {
          visit(next);
          low.merge(one, low.get(next), Math::min);
        } else if (open.contains(next)) {
          low.merge(one, order.get(next), Math::min);
        }
      }
      if (low.get(one).equals(order.get(one))) {
        List<String> ring = open.subList(open.indexOf(one), open.size());
        all.add(new TreeSet<>(ring));
        ring.clear();
      }
    }
  }
}
