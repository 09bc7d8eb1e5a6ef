package plycrag.check.standing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.standing.Mass;

/**
 * Whether a wall on posts tips over: EN 1990 Table A1.2(A), 0.9 of the weight against 1.5 times one
 * climber of 0.8 kN (EN 12572-2:2017 4.6), doubled as it comes suddenly.
 */
class StandsFirmTest {
  private static String wall(String front) {
    return "[wall]\nraise = 400\n[[facet]]\nangle = 40\nwidth = 1200\nlength = 2200\n"
        + "[support]\nkind = \"freestanding\"\nbehind = 200\n"
        + front
        + "\n[inserts]\npitch-across = 600\npitch-up = 600\n";
  }

  @Test
  void railsAsFarAsTheEdgeHoldIt() {
    Found.by("stands-firm", wall("")).isNothing();
  }

  @Test
  void shortRailsLetItTip() {
    Layout layout = Walls.laidOut(wall("front = 200"));
    Mass mass = Mass.ofSupport(layout.wall(), layout.standing());
    for (FacetLayout facet : layout.facets()) {
      mass =
          mass.plus(Mass.ofFrame(layout.wall(), facet)).plus(Mass.ofSheets(layout.wall(), facet));
    }
    double edge = 2200 * Math.sin(Math.toRadians(40));
    double holding = 0.9 * mass.kilograms() * 9.80665 * (200 - mass.centre().y());
    double tipping = 1.5 * 2 * 800 * (edge - 200);
    long missing = Math.round((tipping - holding) / 1000);
    Found.by("stands-firm", layout)
        .times(1)
        .isError(true)
        .says(
            "the wall tips forward over the ends of its rails by "
                + missing
                + " Nm with one climber on its outermost edge");
  }

  @Test
  void whatIsSuggestedHoldsIt() {
    String told = Found.by("stands-firm", wall("front = 200")).findings().get(0).suggestion();
    String front = told.replaceAll(".*reach ([0-9.]+) mm.*", "$1");
    Found.by("stands-firm", wall("front = " + front)).isNothing();
    double less = Double.parseDouble(front) - 60;
    assertThat(Found.by("stands-firm", wall("front = " + less)).findings()).hasSize(1);
  }
}
