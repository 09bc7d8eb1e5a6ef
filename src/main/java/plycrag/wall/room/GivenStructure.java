package plycrag.wall.room;

import java.util.Optional;
import plycrag.wall.buying.MaterialWishes.Environment;

/**
 * By what a wall's structure is checked, and under which loads. Loads are assumptions until
 * somebody measures them; whoever states others knows why.
 *
 * @param basis by which standard
 * @param climbing what climbers do
 * @param holds mass of holds on each square metre of the face, kg
 * @param friction between timber and what it stands on
 * @param deflection a member bends at most this part of its length, as its denominator
 * @param timber what the timber is and where it stands
 * @param screws what screws are made of
 * @param anchor what an anchor bears, as its maker declares it
 */
public record GivenStructure(
    Basis basis,
    Climbing climbing,
    double holds,
    double friction,
    double deflection,
    Material timber,
    ScrewValues screws,
    AnchorValues anchor) {

  /** By which standard a structure is checked. */
  public enum Basis {
    /** EN 1990 and EN 1995-1-1 with the values that they recommend. */
    EC5,
    /** By none: nothing is said of it. */
    NONE
  }

  /**
   * What climbers do.
   *
   * @param weight of one, N
   * @param factor by which a load counts that comes suddenly; 1 for one that hangs still
   * @param sideways the part of that load that acts level as well
   * @param reach how far the tip of a hold stands off the face, mm
   * @param others how many hang still beside the one that moves; empty: as many as the width takes
   */
  public record Climbing(
      double weight, double factor, double sideways, double reach, Optional<Integer> others) {}

  /**
   * What the timber is and where it stands.
   *
   * @param grade as the merchant is asked for it
   * @param strengthClass of EN 338 whose values hold for it; empty: that of the grade, if it is one
   * @param environment which decides the service class
   */
  public record Material(String grade, Optional<String> strengthClass, Environment environment) {
    /** The name by which its values are found. */
    public String name() {
      return strengthClass.orElse(grade);
    }
  }

  /**
   * What screws are made of, as their maker declares it.
   *
   * @param core their root's diameter as a part of the thread's; empty: nobody has said
   * @param strength tensile strength of their steel, N/mm²; empty: nobody has said
   */
  public record ScrewValues(Optional<Double> core, Optional<Double> strength) {}

  /**
   * Design values of one anchor as its maker declares them for what it goes into.
   *
   * @param pull along it, N
   * @param shear across it, N
   */
  public record AnchorValues(Optional<Double> pull, Optional<Double> shear) {}
}
