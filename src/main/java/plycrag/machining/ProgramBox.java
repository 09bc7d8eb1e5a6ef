package plycrag.machining;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;
import plycrag.document.DrillProgram;
import plycrag.document.Xyz;
import plycrag.machining.Playback.Way;

/**
 * The space that a program's tool tip goes through across.
 *
 * @param x how far it goes along X, mm
 * @param y how far it goes along Y, mm
 * @param bottom its lowest Z, mm
 */
record ProgramBox(Span x, Span y, double bottom) {

  /** A stretch of an axis, mm. */
  record Span(double least, double greatest) {}

  /** Of all programs together. */
  static ProgramBox of(List<DrillProgram> programs) {
    List<Xyz> places =
        programs.stream()
            .flatMap(program -> Playback.of(program.moves()).stream())
            .filter(way -> !way.isRapid())
            .map(Way::to)
            .toList();
    return new ProgramBox(span(places, Xyz::x), span(places, Xyz::y), span(places, Xyz::z).least());
  }

  private static Span span(List<Xyz> places, ToDoubleFunction<Xyz> part) {
    DoubleSummaryStatistics all = places.stream().mapToDouble(part).summaryStatistics();
    return new Span(all.getMin(), all.getMax());
  }
}
