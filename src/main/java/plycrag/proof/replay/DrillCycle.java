package plycrag.proof.replay;

import static plycrag.proof.replay.ReadingException.require;

/**
 * A series of drilled holes, as NISTIR 6556 has it: what a line does not say holds on from the line
 * before, until another motion ends the series.
 */
final class DrillCycle {
  /** How far above the last depth a peck begins, and how far a chip is broken: 0.01 in, mm. */
  private static final double BACK_OFF = 0.254;

  private static final double MOST_REPEATS = 1000;

  private final double firstHeight;
  private double retract = Double.NaN;
  private double bottom = Double.NaN;
  private double peck = Double.NaN;
  private double wait = Double.NaN;

  /** A series that begins at a height. */
  DrillCycle(double firstHeight) {
    this.firstHeight = firstHeight;
  }

  /** Drills what a line asks for. */
  void drill(Block block, Settings settings, TipTrace trace, Abilities abilities)
      throws ReadingException {
    Code cycle = settings.motion();
    require(block.hasPlace(), "a cycle without a place");
    require(trace.at().hasHeight(), "a cycle before the tool's height is known");
    takeHeights(block, settings, trace.at().z());
    takeRest(block, settings, cycle, abilities);
    double clear = settings.returnsToFirstHeight() ? Math.max(firstHeight, retract) : retract;
    rise(trace, block.line());
    for (long left = repeats(block); left > 0; left--) {
      TipPlace to = Target.of(block, settings, trace.at()).atHeight(trace.at().z());
      require(to.isKnown(), "a cycle before the tool's place is known");
      trace.rapid(block.line(), to);
      trace.rapid(block.line(), to.atHeight(retract));
      plunge(cycle, block.line(), settings.feed(), trace);
      trace.rapid(block.line(), to.atHeight(clear));
    }
  }

  private void takeHeights(Block block, Settings settings, double z) throws ReadingException {
    double scale = settings.scale();
    if (block.has('R')) {
      retract = block.value('R') * scale + (settings.isIncremental() ? z : 0);
    }
    require(Double.isFinite(retract), "the word R is missing");
    if (block.has('Z')) {
      bottom = block.value('Z') * scale + (settings.isIncremental() ? retract : 0);
    }
    require(Double.isFinite(bottom), "the word Z is missing");
    require(bottom <= retract, "a cycle whose R lies below its Z");
  }

  private void takeRest(Block block, Settings settings, Code cycle, Abilities abilities)
      throws ReadingException {
    peck = block.has('Q') ? block.value('Q') * settings.scale() : peck;
    wait = block.has('P') ? abilities.seconds(block.value('P')) : wait;
    require(cycle != Code.G82 || wait >= 0, "a cycle that waits needs P");
    boolean pecks = cycle == Code.G73 || cycle == Code.G83;
    require(!pecks || peck > BACK_OFF, "a cycle that pecks needs Q");
  }

  private static long repeats(Block block) throws ReadingException {
    double repeats = block.value('L', 1);
    require(repeats == Math.rint(repeats) && repeats >= 1 && repeats <= MOST_REPEATS, "a bad L");
    return Math.round(repeats);
  }

  private void rise(TipTrace trace, int line) {
    if (trace.at().z() < retract) {
      trace.rapid(line, trace.at().atHeight(retract));
    }
  }

  private void plunge(Code cycle, int line, double feed, TipTrace trace) {
    if (cycle == Code.G73 || cycle == Code.G83) {
      peck(cycle == Code.G83 ? Double.POSITIVE_INFINITY : BACK_OFF, line, feed, trace);
    }
    trace.feed(line, trace.at().atHeight(bottom), feed);
    if (cycle == Code.G82) {
      trace.add(new Step.Wait(line, wait));
    }
  }

  private void peck(double back, int line, double feed, TipTrace trace) {
    for (double depth = retract - peck; depth > bottom; depth -= peck) {
      trace.feed(line, trace.at().atHeight(depth), feed);
      trace.rapid(line, trace.at().atHeight(Math.min(retract, depth + back)));
      trace.rapid(line, trace.at().atHeight(Math.min(retract, depth + BACK_OFF)));
    }
  }
}
