package plycrag.proof.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/** Plays one program's steps on the bench, and notes what it cuts and where it goes wrong. */
final class ProgramPlay {
  private final Bench bench;
  private final Heights heights;
  private final String program;
  private final Customs customs;
  private final Spindle spindle;
  private final TravelCheck travel;
  private final List<Fault> faults = new ArrayList<>();
  private final List<Visit> visits = new ArrayList<>();
  private final List<CutMove> cuts = new ArrayList<>();
  private TipPlace at = TipPlace.UNKNOWN;
  private double reached = Double.POSITIVE_INFINITY;
  private boolean beside;

  private ProgramPlay(Bench bench, Program program) {
    this.bench = bench;
    this.heights = bench.heights();
    this.program = program.name();
    this.customs = program.customs();
    this.spindle = new Spindle(program.cutters());
    this.travel = new TravelCheck(bench);
  }

  /**
   * What came of a program.
   *
   * @param visits in order
   * @param faults in the order of lines
   */
  record Played(List<Visit> visits, List<Fault> faults) {}

  static Played play(Bench bench, Program program, List<Step> steps) {
    ProgramPlay play = new ProgramPlay(bench, program);
    steps.forEach(play::take);
    play.leave();
    return new Played(List.copyOf(play.visits), List.copyOf(play.faults));
  }

  private void take(Step step) {
    if (step instanceof Step.Rapid rapid) {
      rapid(rapid);
    } else if (step instanceof Step.Feed feed) {
      feed(feed);
    } else if (step instanceof Step.Wait wait) {
      add(step, spindle.pause(wait.seconds()));
    } else if (step instanceof Step.Start start) {
      add(step, spindle.start(start.speed()));
      require(
          step, isAtLeast(at.z(), heights.travel().clearance()), "the spindle starts in the work");
    } else if (step instanceof Step.Stop) {
      add(step, spindle.stop());
      require(
          step, isAtLeast(at.z(), heights.travel().clearance()), "the spindle stops in the work");
    } else if (step instanceof Step.Beside switched) {
      beside = switched.on();
    } else if (step instanceof Step.Length length) {
      add(step, spindle.measure(length.tool()));
    } else {
      rest(step);
    }
  }

  private void rest(Step step) {
    leave();
    require(
        step, isAtLeast(at.z(), heights.travel().safe()), "the tool rests below the safe height");
    if (step instanceof Step.Change change) {
      stop(step);
      add(step, spindle.change(change.tool()));
    } else if (step instanceof Step.Pause) {
      stop(step);
      add(step, spindle.changeByHand());
    } else {
      require(step, !spindle.isTurning(), "the spindle turns at the end");
      require(step, !beside, "what runs beside the spindle runs on at the end");
      require(step, isAt(customs.park()), "the tool is left at another place");
    }
    at = at.atUnknownHeight();
  }

  private void stop(Step step) {
    Bench.Stop stop = bench.stop();
    require(step, isAtLeast(at.z(), stop.height()), "the tool is changed below the height for it");
    require(step, isAt(stop.place()), "the tool is changed at another place");
  }

  private boolean isAt(Optional<Coordinate> place) {
    return place.stream()
        .allMatch(one -> at.isKnown() && at.coordinate().distance(one) <= Accuracy.PLACE);
  }

  private void rapid(Step.Rapid rapid) {
    TipPlace to = rapid.to();
    boolean first = !at.hasHeight();
    require(
        rapid,
        !first || (at.isAbove(to) && isAtLeast(to.z(), heights.travel().safe())),
        "a tool's first motion is not Z alone to the safe height");
    double highest = Math.max(heights.travel().safe(), bench.stop().height());
    require(rapid, to.z() <= highest + Accuracy.DIGIT, "the tool rises above all that is told");
    if (at.isAbove(to)) {
      double least = Math.min(heights.travel().clearance(), reached);
      require(rapid, isAtLeast(to.z(), least), "a rapid goes down into the sheet");
    } else if (!first) {
      leave();
      double lowest = Math.min(at.z(), to.z());
      require(
          rapid, isAtLeast(lowest, heights.travel().clearance()), "a rapid across below clearance");
      add(rapid, travel.fault(at, to, spindle.cutter().radius()));
    }
    at = to;
  }

  private void feed(Step.Feed feed) {
    require(feed, spindle.isAtSpeed(bench.dwell()), "a cut before the spindle is up to speed");
    require(feed, beside || !customs.beside(), "a cut without what is to run beside the spindle");
    require(feed, at.isKnown(), "a cut before the tool's place is known");
    if (!at.isKnown()) {
      return;
    }
    for (TipPlace to : feed.way().subList(1, feed.way().size())) {
      cut(feed, to);
    }
  }

  private void cut(Step.Feed feed, TipPlace to) {
    boolean sideways = !at.isAbove(to);
    Cutter cutter = spindle.cutter();
    require(feed, cutter.cutsAt(feed.rate(), at, to), "not a feed of tool " + cutter.number());
    if (sideways) {
      reached = Double.POSITIVE_INFINITY;
      add(feed, travel.fault(at, to, cutter.radius()));
    }
    require(
        feed,
        isAtLeast(to.z(), heights.travel().floor()),
        "a cut below the lowest that is allowed");
    inSheet(new CutMove(feed.line(), at, to))
        .ifPresent(
            cut -> {
              cuts.add(cut);
              require(feed, !sideways || cutter.sideways(), "a tool that only drills goes across");
            });
    at = to;
    reached = Math.min(reached, to.z());
  }

  /** The part of a cut that lies below the sheet's top. */
  private Optional<CutMove> inSheet(CutMove cut) {
    double top = heights.sheet().top();
    if (cut.lowest() >= top - Accuracy.DIGIT) {
      return Optional.empty();
    }
    TipPlace from = cut.from().z() > top ? cut.from().towards(cut.to(), top) : cut.from();
    TipPlace to = cut.to().z() > top ? cut.from().towards(cut.to(), top) : cut.to();
    return Optional.of(new CutMove(cut.line(), from, to));
  }

  /** The tool goes elsewhere. */
  private void leave() {
    if (!cuts.isEmpty()) {
      visits.add(new Visit(program, spindle.cutter(), cuts));
      cuts.clear();
    }
    reached = Double.POSITIVE_INFINITY;
  }

  private static boolean isAtLeast(double z, double least) {
    return z >= least - Accuracy.DIGIT;
  }

  private void add(Step step, Optional<String> sentence) {
    sentence
        .map(what -> new Fault(program, step.line(), what))
        .filter(fault -> !faults.contains(fault))
        .ifPresent(faults::add);
  }

  private void require(Step step, boolean holds, String otherwise) {
    add(step, holds ? Optional.empty() : Optional.of(otherwise));
  }
}
