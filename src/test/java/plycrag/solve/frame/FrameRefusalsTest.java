package plycrag.solve.frame;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static plycrag.solve.frame.PlaneFrame.vector;
import static plycrag.solve.frame.Timber.S1;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** What contradicts itself is refused, and says what. */
class FrameRefusalsTest {
  private static final FrameNode A = new FrameNode("a", vector(0, 0, 0));
  private static final FrameNode B = new FrameNode("b", vector(1000, 0, 0));

  private static Beam beam(FrameNode end, Freedom... released) {
    BeamEnd both = new BeamEnd(Attachment.at(A), Set.of(released));
    return new Beam(
        "beam", both, new BeamEnd(Attachment.at(end), Set.of(released)), vector(0, 1, 0), S1);
  }

  private static void refuses(ThrowingCallable what, String why) {
    assertThatThrownBy(what).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(why);
  }

  private static void refuses(FrameLoad load, String why) {
    FrameModel model =
        new FrameModel(
            List.of(beam(B)),
            List.of(Bar.between("bar", A, B, 1)),
            List.of(),
            FrameSupport.fixed(A));
    refuses(() -> FrameAnalysis.of(model).firstOrder(new LoadCase("one", List.of(load))), why);
  }

  @Test
  void parts() {
    refuses(() -> beam(B, Freedom.ABOUT_X), "nothing holds beam");
    refuses(() -> beam(B, Freedom.ALONG_Y), "passes shear on");
    refuses(() -> beam(A).length(), "without length");
    refuses(() -> Bar.between("bar", A, A, 1), "bar");
    refuses(() -> BeamSection.rectangle(0, 45, 1, 1), "more than nothing");
    refuses(() -> FrameSupport.spring(A, Freedom.ALONG_X, 0), "more than nothing");
    refuses(() -> new ShearPanel("sheet", List.of(Attachment.at(A)), 1), "four corners");
    refuses(
        () -> new Beam("beam", BeamEnd.rigid(A), BeamEnd.rigid(B), vector(1, 0, 0), S1).axes(),
        "reference");
  }

  @Test
  void names() {
    refuses(() -> FrameModel.of(List.of(beam(B), beam(B)), List.of()), "beam");
    FrameNode other = new FrameNode("a", vector(0, 1000, 0));
    refuses(() -> FrameModel.of(List.of(beam(other)), List.of()), "a");
    List<FrameSupport> twice =
        Stream.concat(FrameSupport.fixed(A).stream(), FrameSupport.pinned(A).stream()).toList();
    refuses(() -> FrameModel.of(List.of(beam(B)), twice), "a ALONG_X");
    refuses(() -> FrameAnalysis.of(FrameModel.of(List.of(beam(B)), List.of()), 0), "one piece");
  }

  @Test
  void loads() {
    refuses(FrameLoad.on("other", 0, vector(0, 0, 0)), "no member");
    refuses(FrameLoad.on("bar", 0, vector(0, 0, 0)), "no beam");
    refuses(FrameLoad.on("beam", 1001, vector(0, 0, 0)), "beyond the end");
    refuses(FrameLoad.on("beam", -1, vector(0, 0, 0)), "before the start");
    refuses(FrameLoad.on(new FrameNode("c", vector(0, 0, 0)), vector(0, 0, 0)), "no node");
    refuses(new FrameLoad.Settlement(B, Freedom.ALONG_X, 1), "no rigid support");
  }
}
