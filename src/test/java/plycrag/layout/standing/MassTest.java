package plycrag.layout.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.geometry.Volume;
import plycrag.layout.Layout;
import plycrag.layout.support.PlacedMember;

/** Volumes, masses and centres of gravity. */
class MassTest {
  private static final Offset<Double> CLOSE = within(1e-6);

  private static Solid prism(List<Vector3> near, Vector3 along) {
    return new Solid(near, near.stream().map(place -> place.plus(along)).toList());
  }

  /** A square timber's mass a metre at 420 kg/m³ (EN 338 C24 mean): 45 x 95 mm weighs 1.796 kg. */
  @Test
  void aMetreOfTimber() {
    Volume bulk =
        Volume.of(
            prism(
                List.of(
                    new Vector3(0, 0, 0),
                    new Vector3(45, 0, 0),
                    new Vector3(45, 95, 0),
                    new Vector3(0, 95, 0)),
                new Vector3(0, 0, 1000)));
    assertThat(bulk.volume() * 420 / 1e9).isCloseTo(1.796, within(0.0005));
    assertThat(bulk.centre().x()).isCloseTo(22.5, CLOSE);
    assertThat(bulk.centre().y()).isCloseTo(47.5, CLOSE);
    assertThat(bulk.centre().z()).isCloseTo(500, CLOSE);
  }

  /** A three-sided prism: half the box, its middle a third of the way from the square corner. */
  @Test
  void aWedge() {
    Volume bulk =
        Volume.of(
            prism(
                List.of(new Vector3(0, 0, 0), new Vector3(60, 0, 0), new Vector3(0, 90, 0)),
                new Vector3(0, 0, 200)));
    assertThat(bulk.volume()).isCloseTo(60 * 90 * 200 / 2.0, CLOSE);
    assertThat(bulk.centre().x()).isCloseTo(20, CLOSE);
    assertThat(bulk.centre().y()).isCloseTo(30, CLOSE);
    assertThat(bulk.centre().z()).isCloseTo(100, CLOSE);
  }

  /** One sheet of 2440 x 1220 x 18 mm at 680 kg/m³ weighs 36.44 kg, worked by hand. */
  @Test
  void aWholeSheetThatLeans() {
    Layout layout =
        Walls.laidOut(
            """
            [wall]
            raise = 300
            [[facet]]
            angle = 30
            width = 2440
            length = 1220
            [inserts]
            pitch-across = 600
            pitch-up = 600
            """);
    Mass mass = Mass.ofSheets(layout.wall(), layout.facets().get(0));
    assertThat(mass.kilograms()).isCloseTo(36.44, within(0.005));
    assertThat(mass.centre().x()).isCloseTo(1220, CLOSE);
    assertThat(mass.centre().y())
        .isCloseTo(610 * 0.5 - 9 * Math.cos(Math.toRadians(30)), within(1e-3));
    assertThat(mass.centre().z())
        .isCloseTo(300 + 610 * Math.cos(Math.toRadians(30)) + 9 * 0.5, within(1e-3));
  }

  /**
   * Facets that lean 30° apart meet at bevels of 15°: behind the fold each sheet of 18 mm is 18 ·
   * tan 15° longer than before it.
   */
  @Test
  void aBevelledSheetWeighsWhatItsEdgeHasMore() {
    Layout layout =
        Walls.laidOut(
            """
            [wall]
            width = 1200
            [[facet]]
            name = "low"
            length = 1000
            [[facet]]
            name = "high"
            angle = 30
            length = 1000
            [inserts]
            pitch-across = 600
            pitch-up = 600
            """);
    double length = 1 + 0.018 * Math.tan(Math.toRadians(15)) / 2;
    Mass mass = Mass.ofSheets(layout.wall(), layout.facets().get(0));
    assertThat(mass.kilograms()).isCloseTo(1.2 * length * 0.018 * 680, within(1e-5));
  }

  /** Members of a support are flat sides pulled through their breadth: area times 45 mm. */
  @Test
  void aSupportWeighsItsAreas() {
    Layout layout =
        Walls.laidOut(
            """
            [wall]
            raise = 400
            [[facet]]
            angle = 30
            width = 1200
            length = 2000
            [support]
            kind = "freestanding"
            [inserts]
            pitch-across = 600
            pitch-up = 600
            """);
    double volume = 0;
    double out = 0;
    for (PlacedMember placed : layout.standing()) {
      double part = placed.member().footprint().getArea() * 45;
      boolean across = placed.plane().floorAxes().heading() == 0;
      double middle =
          across ? placed.plane().out() - 22.5 : placed.member().footprint().getCentroid().getX();
      volume += part;
      out += part * middle;
    }
    Mass mass = Mass.ofSupport(layout.wall(), layout.standing());
    assertThat(mass.kilograms()).isCloseTo(volume * 420 / 1e9, within(1e-6));
    assertThat(mass.centre().y()).isCloseTo(out / volume, within(1e-3));
  }

  /** 110 kg at 25 kg each are five people; nobody lifts alone. */
  @Test
  void peopleForTheLift() {
    Vector3 anywhere = new Vector3(0, 0, 0);
    assertThat(new Mass(110, anywhere).people(25)).isEqualTo(5);
    assertThat(new Mass(100, anywhere).people(25)).isEqualTo(4);
    assertThat(new Mass(10, anywhere).people(25)).isEqualTo(2);
  }
}
