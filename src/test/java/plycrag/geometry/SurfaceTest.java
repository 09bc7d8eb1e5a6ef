package plycrag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import plycrag.glb.Mesh;
import plycrag.glb.Space;

class SurfaceTest {
  private static Polygon area(String text) throws ParseException {
    Geometry read = new WKTReader().read("POLYGON (" + text + ")");
    return Shapes.areas(read).get(0);
  }

  /** In metres, so that the reader's measures fit. */
  private static Mesh mesh(Surface surface) {
    return new Mesh(
        surface.triangles().stream()
            .map(one -> new Mesh.Triangle(space(one.a()), space(one.b()), space(one.c())))
            .filter(one -> !one.a().equals(one.b()))
            .filter(one -> !one.b().equals(one.c()))
            .filter(one -> !one.c().equals(one.a()))
            .toList());
  }

  private static Space space(Vector3 at) {
    return new Space(at.x(), at.y(), at.z());
  }

  /**
   * Square sides: area times thickness. Slanting ones: by Simpson's rule, which is exact, as areas
   * between parallel faces change with the square of the depth.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "(0 0, 100 0, 100 50, 0 50, 0 0) | (0 0, 100 0, 100 50, 0 50, 0 0) | 50000",
        "(0 0, 100 0, 100 50, 0 50, 0 0) | (0 0, 100 0, 100 56, 0 56, 0 0) | 53000",
        "(0 0, 90 0, 90 90, 60 90, 60 30, 30 30, 30 90, 0 90, 0 0)"
            + " | (0 0, 90 0, 90 90, 60 90, 60 30, 30 30, 30 90, 0 90, 0 0) | 63000",
        "(0 0, 90 0, 90 90, 0 90, 0 0), (20 20, 20 40, 40 40, 40 20, 20 20),"
            + " (50 50, 50 60, 70 60, 70 50, 50 50)"
            + " | (0 0, 90 0, 90 90, 0 90, 0 0), (50 50, 50 60, 70 60, 70 50, 50 50),"
            + " (20 20, 20 40, 40 40, 40 20, 20 20) | 75000"
      })
  void aBodyBetweenOutlinesIsClosedAndHasItsVolume(String near, String far, double volume)
      throws ParseException {
    Surface surface = Surface.between(area(near), 5, area(far), 15);
    assertThat(mesh(surface).isWatertight()).isTrue();
    assertThat(surface.volume()).isCloseTo(-volume, within(1e-6));
    assertThat(surface.turned().volume()).isCloseTo(volume, within(1e-6));
    assertThat(mesh(surface.turned()).volume()).isCloseTo(volume, within(1e-6));
  }

  /** A bevel that runs out through an opening leaves a notch behind: a step in the middle. */
  @Test
  void anOpeningThatIsANotchBehindMakesAStep() throws ParseException {
    Polygon near = area("(0 0, 90 0, 90 90, 0 90, 0 0), (20 84, 20 88, 40 88, 40 84, 20 84)");
    Polygon far = area("(0 0, 90 0, 90 86, 40 86, 40 84, 20 84, 20 86, 0 86, 0 0)");
    Surface surface = Surface.between(near, 0, far, 10);
    assertThat(surface.volume())
        .isCloseTo(-(near.getArea() + far.getArea()) / 2 * 10, within(1e-6));
    List<Surface.Triangle> triangles = surface.triangles();
    assertThat(triangles).isNotEmpty();
    assertThat(triangles.stream().filter(one -> one.a().z() == 5 && one.b().z() == 5)).isNotEmpty();
  }

  /** What is seen counter-clockwise from outside stays so where axes keep their hand. */
  @Test
  void aMirrorTurnsTheSense() {
    Solid box = Solid.between(Shapes.rectangle(0, 0, 3, 4), 0, Shapes.rectangle(0, 0, 3, 4), 5);
    Surface surface = Surface.of(box);
    assertThat(surface.volume()).isCloseTo(-60, within(1e-9));
    assertThat(surface.mapped(at -> new Vector3(at.x(), -at.z(), at.y())).volume())
        .isCloseTo(-60, within(1e-9));
    assertThat(surface.mapped(at -> new Vector3(-at.x(), at.y(), at.z())).volume())
        .isCloseTo(60, within(1e-9));
  }
}
