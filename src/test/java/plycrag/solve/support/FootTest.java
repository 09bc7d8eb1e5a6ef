package plycrag.solve.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plycrag.solve.support.Sections.back;
import static plycrag.solve.support.Sections.meetings;
import static plycrag.solve.support.Sections.site;
import static plycrag.solve.support.Sections.timbers;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.solve.support.Stiffening.Along;

/** Heels of 40 by 100 on rails of 100, on which the frames stand too. */
class FootTest {
  private static final BackEdge PLUMB = back("main", 0, 0, 100, 0, 2000);

  /** 3 out and 4 up for 5 along it. */
  private static final BackEdge LEANING = back("main", 37, 0, 100, 1125, 1600);

  private static SupportFrame frame(double behind, BackEdge... backs) {
    Stiffening none = new Stiffening(Along.NOTHING, false, 600);
    return Freestanding.of(site(List.of(0.0, 600.0), 600, backs), behind, 1800, none);
  }

  /** 420 up from the rail. */
  @Test
  void aHeelStandsFlatOnTheRailBehindTheStud() {
    SupportFrame frame = frame(300, PLUMB);
    assertThat(timbers(frame, TimberUse.HEEL))
        .hasSize(2)
        .allMatch(heel -> Sections.side(heel).equals("-100 100, 0 100, 0 520, -100 520"))
        .allMatch(heel -> heel.depth() == 40);
    assertThat(meetings(frame, TimberUse.HEEL).subList(0, 2))
        .containsExactly("HEEL on RAIL at -50 100 along 100", "HEEL on main at 0 310 along 420");
    assertThat(frame.unheld()).isEmpty();
  }

  /** 100 across it are 100 · 5/4 = 125 of the rail; 420 along it are 336 up and 252 out. */
  @Test
  void aHeelLeansAsTheStudDoes() {
    SupportFrame frame = frame(300, LEANING);
    SupportTimber heel = timbers(frame, TimberUse.HEEL).get(0);
    assertThat(Sections.side(heel)).isEqualTo("-125 100, 0 100, 252 436, 127 436");
    assertThat(heel.direction().u()).isCloseTo(0.6, within(1e-9));
    assertThat(heel.direction().v()).isCloseTo(0.8, within(1e-9));
    assertThat(meetings(frame, TimberUse.HEEL).subList(0, 2))
        .containsExactly(
            "HEEL on RAIL at -62.5 100 along 125", "HEEL on main at 126 268 along 420");
  }

  /** Of a frame of 300 it takes 0.8: 240. Of 525 that is 420, and more of no frame. */
  @Test
  void aHeelLeavesALowFrameRoom() {
    assertThat(top(back("kick", 0, 0, 100, 0, 400))).isEqualTo(340);
    assertThat(top(back("kick", 0, 0, 100, 0, 625))).isEqualTo(520);
    assertThat(top(back("kick", 0, 0, 100, 0, 725))).isEqualTo(520);
  }

  private static double top(BackEdge kick) {
    BackEdge main = back("main", 37, 0, kick.high().z(), 1125, kick.high().z() + 1500);
    SupportTimber heel = timbers(frame(300, kick, main), TimberUse.HEEL).get(0);
    return heel.outline().getEnvelopeInternal().getMaxY();
  }

  /** It keeps 5 off the post: of 85 behind that leaves 80, across a stud that leans 80 · 4/5. */
  @Test
  void aHeelIsAsDeepAsThereIsRoom() {
    assertThat(Sections.side(timbers(frame(85, PLUMB), TimberUse.HEEL).get(0)))
        .isEqualTo("-80 100, 0 100, 0 520, -80 520");
    assertThat(meetings(frame(85, LEANING), TimberUse.HEEL).get(0))
        .isEqualTo("HEEL on RAIL at -40 100 along 80");
  }

  /** 60 is the least depth: 65 behind a plumb frame, 60 · 5/4 + 5 = 80 behind the other. */
  @Test
  void whereThereIsNoRoomItSaysHowMuchWouldDo() {
    assertThat(timbers(frame(65, PLUMB), TimberUse.HEEL)).hasSize(2);
    assertNoRoom(frame(64, PLUMB), 64, 65);
    assertThat(timbers(frame(80, LEANING), TimberUse.HEEL)).hasSize(2);
    assertNoRoom(frame(79, LEANING), 79, 80);
  }

  private static void assertNoRoom(SupportFrame frame, double found, double required) {
    assertThat(timbers(frame, TimberUse.HEEL)).isEmpty();
    Unheld heel =
        frame.unheld().stream()
            .filter(one -> one.cause() == Unheld.Cause.HEEL)
            .findFirst()
            .orElseThrow();
    assertThat(heel.facet()).isEqualTo("main");
    assertThat(heel.found()).isEqualTo(found);
    assertThat(heel.required()).isCloseTo(required, within(1e-9));
  }
}
