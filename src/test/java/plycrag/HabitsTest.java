package plycrag;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.charset.Charset;
import java.time.Clock;
import java.util.Locale;
import java.util.Set;
import org.locationtech.jts.geom.GeometryFactory;

/** What only some rooms may do, so that the same input makes the same bytes everywhere. */
@AnalyzeClasses(packages = "plycrag", importOptions = HouseTest.MainOnly.class)
class HabitsTest {
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
}
