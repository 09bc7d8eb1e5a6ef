package plycrag.bench;

import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import plycrag.geometry.Shapes;
import plycrag.solve.scatter.Fade;
import plycrag.solve.scatter.Scatter;
import plycrag.solve.scatter.Spread;

/** A scatter of about so many centres over one square. */
@State(Scope.Benchmark)
public class ScatterScale {
  private static final double DISTANCE = 140;
  private static final int WARM_SIZE = 1000;
  private static final int WARM_ROUNDS = 20;

  /** Of the square's side over the distance and the root of the number; measured. */
  private static final double SIDE = 1.198;

  @Param({"1000", "3162", "10000", "31623", "100000"})
  int size;

  private Geometry area;

  /** Makes the square, once small ones have warmed the machine up. */
  @Setup
  public void square() {
    area = square(WARM_SIZE);
    for (int round = 0; round < WARM_ROUNDS; round++) {
      scatter();
    }
    area = square(size);
  }

  private static Geometry square(int size) {
    double side = SIDE * DISTANCE * Math.sqrt(size);
    return Shapes.rectangle(0, 0, side, side);
  }

  /** The whole scatter. */
  @Benchmark
  public List<Point> scatter() {
    return Scatter.over(
        area, new Spread(new Fade(0, DISTANCE, 1, DISTANCE), 1, 1, OptionalDouble.empty()));
  }
}
