package plycrag.app;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.units.Decimal;

/** Variants as places in a field: what they cost against what they give. */
final class StudyPlots {
  private static final double WIDTH = 150;
  private static final double HEIGHT = 90;
  private static final double EDGE = 22;
  private static final double DOT = 1.1;
  private static final int STEPS = 4;

  private final Study study;
  private final Sketch sketch = new Sketch(1);

  private StudyPlots(Study study) {
    this.study = study;
  }

  /**
   * What a side of the field counts.
   *
   * @param name of it
   * @param value of a variant
   */
  private record Side(String name, ToDoubleFunction<Tally> value) {}

  /** Two: price against inserts, where all prices are known, else sheets; mass against inserts. */
  static List<Drawing> of(Study study) {
    boolean priced =
        study.variants().stream()
            .flatMap(one -> one.tally().stream())
            .allMatch(one -> one.cost().isPresent());
    Side inserts = new Side("inserts", one -> one.counts().inserts());
    Side price =
        priced
            ? new Side("cost", one -> one.cost().orElseThrow().doubleValue())
            : new Side("sheets", one -> one.counts().sheets());
    Side mass = new Side("mass, kg", Tally::mass);
    return List.of(
        new StudyPlots(study).drawing(inserts, price),
        new StudyPlots(study).drawing(inserts, mass));
  }

  private Drawing drawing(Side across, Side up) {
    Spread right = range(across);
    Spread high = range(up);
    sketch.closed(
        Layers.DIMENSIONS,
        List.of(new Xy(0, 0), new Xy(WIDTH, 0), new Xy(WIDTH, HEIGHT), new Xy(0, HEIGHT)));
    for (int step = 0; step <= STEPS; step++) {
      double part = (double) step / STEPS;
      write(new Xy(part * WIDTH, -4), right.at(part), TextAnchor.MIDDLE);
      write(new Xy(-3, part * HEIGHT), high.at(part), TextAnchor.END);
    }
    sketch.label(
        Layers.TEXT, new Xy(WIDTH / 2, -11), across.name(), Sketch.LARGE, TextAnchor.MIDDLE);
    sketch.label(Layers.TEXT, new Xy(0, HEIGHT + 6), up.name(), Sketch.LARGE, TextAnchor.START);
    for (Variant variant : study.variants()) {
      variant
          .tally()
          .ifPresent(
              one ->
                  mark(
                      new Xy(
                          right.part(across.value().applyAsDouble(one)) * WIDTH,
                          high.part(up.value().applyAsDouble(one)) * HEIGHT),
                      one,
                      variant.isBest(study.variants())));
    }
    Extent extent = new Extent(-EDGE, -EDGE, WIDTH + EDGE, HEIGHT + EDGE);
    return sketch.drawing(study.wall() + ": " + up.name() + " against " + across.name(), extent);
  }

  private void mark(Xy at, Tally tally, boolean isBest) {
    if (!tally.isSound()) {
      sketch.line(Layers.FINDINGS, at.plus(-DOT, -DOT), at.plus(DOT, DOT));
      sketch.line(Layers.FINDINGS, at.plus(-DOT, DOT), at.plus(DOT, -DOT));
      return;
    }
    List<Xy> corners =
        List.of(at.plus(-DOT, -DOT), at.plus(DOT, -DOT), at.plus(DOT, DOT), at.plus(-DOT, DOT));
    if (isBest) {
      sketch.area(Layers.TINT, corners, Fill.INK);
    }
    sketch.outline(Layers.PARTS, corners);
  }

  private void write(Xy at, double value, TextAnchor anchor) {
    sketch.label(Layers.TEXT, at, Decimal.of(value, 1), Sketch.SMALL, anchor);
  }

  private Spread range(Side side) {
    double[] values =
        study.variants().stream()
            .flatMap(one -> one.tally().stream())
            .mapToDouble(side.value())
            .toArray();
    double least = DoubleStream.of(values).min().orElse(0);
    double most = DoubleStream.of(values).max().orElse(1);
    double room = most > least ? (most - least) / 10 : 1;
    return new Spread(Math.max(0, least - room), most + room);
  }

  private record Spread(double least, double most) {
    double part(double value) {
      return (value - least) / (most - least);
    }

    double at(double part) {
      return least + part * (most - least);
    }
  }
}
