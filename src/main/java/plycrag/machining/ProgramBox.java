package plycrag.machining;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;
import plycrag.document.Move;
import plycrag.document.Xyz;
import plycrag.machining.Playback.Way;

/** The space that a program's tool tip goes through across, and its lowest place; mm. */
record ProgramBox(double left, double right, double low, double high, double bottom) {

  static ProgramBox of(List<Move> moves) {
    List<Xyz> places =
        Playback.of(moves).stream()
            .filter(way -> way.isAcross() || !way.isRapid())
            .map(Way::to)
            .toList();
    DoubleSummaryStatistics x = range(places, Xyz::x);
    DoubleSummaryStatistics y = range(places, Xyz::y);
    double bottom = range(places, Xyz::z).getMin();
    return new ProgramBox(x.getMin(), x.getMax(), y.getMin(), y.getMax(), bottom);
  }

  private static DoubleSummaryStatistics range(List<Xyz> places, ToDoubleFunction<Xyz> part) {
    return places.stream().mapToDouble(part).summaryStatistics();
  }
}
