package plycrag.proof.replay;

import static plycrag.proof.replay.ReadingException.require;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/** Obeys lines one after the other, each in the order of NISTIR 6556. */
final class Interpreter {
  private final Abilities abilities;
  private final Settings settings = new Settings();
  private final TipTrace trace = new TipTrace();
  private Optional<DrillCycle> cycle = Optional.empty();
  private double speed;
  private int tool;
  private boolean ended;

  Interpreter(Abilities abilities) {
    this.abilities = abilities;
  }

  List<Step> steps() {
    return trace.steps();
  }

  boolean hasEnded() {
    return ended;
  }

  void obey(Block block) throws ReadingException {
    require(!ended, "something follows the program's end");
    settings.take(block);
    CodeLetters.check(block, settings);
    settings.takeFeed(block);
    spindleAndTool(block);
    block
        .code(ModalGroup.BESIDE)
        .ifPresent(code -> trace.add(new Step.Beside(block.line(), code != Code.M9)));
    length(block);
    pause(block);
    if (block.code(ModalGroup.MOTION).filter(code -> !code.isCycle()).isPresent()) {
      cycle = Optional.empty();
    }
    if (CodeLetters.moves(block)) {
      move(block);
    }
    stop(block);
  }

  private void spindleAndTool(Block block) throws ReadingException {
    speed = block.value('S', speed);
    if (block.has('T')) {
      double number = block.value('T');
      require(number == Math.rint(number) && number > 0, "no number of a tool");
      tool = (int) number;
    }
    if (block.code(ModalGroup.TOOL).isPresent()) {
      require(tool > 0, "a change of tool before a tool is named");
      trace.add(new Step.Change(block.line(), tool));
      trace.forgetHeight();
    }
    if (block.code(ModalGroup.SPINDLE).equals(Optional.of(Code.M3))) {
      require(speed > 0, "the spindle starts without a speed");
      trace.add(new Step.Start(block.line(), speed));
    } else if (block.code(ModalGroup.SPINDLE).isPresent()) {
      trace.add(new Step.Stop(block.line()));
    } else {
      require(!block.has('S'), "a speed without the spindle's start");
    }
  }

  private void length(Block block) throws ReadingException {
    if (block.code(ModalGroup.TOOL_LENGTH).equals(Optional.of(Code.G43))) {
      double number = block.value('H');
      require(number == Math.rint(number) && number > 0, "no number of a length");
      trace.add(new Step.Length(block.line(), (int) number));
    }
  }

  private void pause(Block block) throws ReadingException {
    if (block.code(ModalGroup.WAIT).isPresent()) {
      double seconds = abilities.seconds(block.value('P'));
      require(seconds >= 0, "a wait of less than nothing");
      trace.add(new Step.Wait(block.line(), seconds));
    }
  }

  private void move(Block block) throws ReadingException {
    settings.requireModes();
    Code motion = settings.motion();
    if (motion.isCycle()) {
      cycle = cycle.or(() -> Optional.of(new DrillCycle(trace.at().z())));
      cycle.get().drill(block, settings, trace, abilities);
      return;
    }
    require(motion.isArc() || block.hasPlace(), "a motion without a place");
    TipPlace to = Target.of(block, settings, trace.at());
    if (motion == Code.G0) {
      trace.rapid(block.line(), to);
    } else if (motion == Code.G1) {
      trace.feed(block.line(), to, settings.feed());
    } else {
      trace.feed(block.line(), arc(block, motion, to).way(), settings.feed());
    }
  }

  private Arc arc(Block block, Code motion, TipPlace to) throws ReadingException {
    TipPlace from = trace.at();
    require(from.isKnown(), "an arc before the tool's place is known");
    boolean left = motion == Code.G3;
    double scale = settings.scale();
    if (block.has('R')) {
      require(!block.has('I') && !block.has('J'), "an arc by its radius and by its centre");
      return Arc.within(from, to, block.value('R') * scale, left);
    }
    require(block.has('I') || block.has('J'), "an arc without centre");
    if (settings.centresAreAtZero()) {
      double x = block.value('I') * scale;
      return Arc.about(from, to, new Coordinate(x, block.value('J') * scale), left);
    }
    double x = from.x() + block.value('I', 0) * scale;
    double y = from.y() + block.value('J', 0) * scale;
    return Arc.about(from, to, new Coordinate(x, y), left);
  }

  private void stop(Block block) {
    Optional<Code> stop = block.code(ModalGroup.STOP);
    ended = stop.filter(code -> code != Code.M0).isPresent();
    if (ended) {
      trace.add(new Step.End(block.line()));
    } else if (stop.isPresent()) {
      trace.add(new Step.Pause(block.line()));
      trace.forgetHeight();
    }
  }
}
