package plycrag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class FacetPlaneTest {

  /** Sine and cosine of 30° are 0.5 and 0.8660254. */
  @Test
  void aFacetThatLeansOutGoesForwardAndUp() {
    Vector3 place =
        new FacetPlane(30, 0, 100, 300, FloorAxes.FIRST).toRoom(new Vector3(7, 1000, 10));
    assertThat(place.x()).isEqualTo(7);
    assertThat(place.y()).isCloseTo(100 + 500 - 8.660, within(1e-3));
    assertThat(place.z()).isCloseTo(300 + 866.025 + 5, within(1e-3));
  }

  @Property
  void toTheRoomAndBackIsTheSame(
      @ForAll @DoubleRange(min = -15, max = 90) double angle,
      @ForAll @DoubleRange(min = -5000, max = 5000) double v,
      @ForAll @DoubleRange(min = -200, max = 200) double w,
      @ForAll @DoubleRange(min = -180, max = 180) double heading) {
    FacetPlane plane = new FacetPlane(angle, 40, 250, 300, new FloorAxes(1200, -700, heading));
    Vector3 back = plane.fromRoom(plane.toRoom(new Vector3(3, v, w)));
    assertThat(back.x()).isCloseTo(3, within(1e-8));
    assertThat(back.y()).isCloseTo(v, within(1e-8));
    assertThat(back.z()).isCloseTo(w, within(1e-8));
  }
}
