package plycrag.check.structure;

import plycrag.layout.structure.Combination;
import plycrag.layout.structure.MemberLine;
import plycrag.solve.timber.ColumnBuckling;
import plycrag.solve.timber.DesignStrength;
import plycrag.solve.timber.LateralBuckling;
import plycrag.solve.timber.RectangularSection;
import plycrag.solve.timber.SectionTorsion;
import plycrag.solve.timber.TimberStrength;
import plycrag.solve.timber.Worked;

/**
 * What a member bears.
 *
 * @param section y over its greater side
 * @param isFlat whether its breadth is its greater side
 * @param design its strengths
 * @param column how its timber buckles
 * @param columnY k_c for buckling over the greater side
 * @param columnZ the same over the smaller
 * @param lateral k_crit
 * @param torsionOfOne the utilisation of torsion by 1 N mm
 */
record MemberResistance(
    RectangularSection section,
    boolean isFlat,
    DesignStrength design,
    ColumnBuckling column,
    Worked columnY,
    Worked columnZ,
    Worked lateral,
    double torsionOfOne) {

  /**
   * Of a member. Over its greater side it buckles between its outermost stations; over its smaller
   * side, and sideways when bent, what is under sheets does between its stations, all else between
   * the outermost. l_ef is that length and twice the depth, EN 1995-1-1, Table 6.1, for a constant
   * moment and loads on the edge in compression, the worst of its rows.
   */
  static MemberResistance of(MemberLine member, TimberValues timber, Combination combination) {
    double breadth = member.axis().breadth();
    double depth = member.axis().depth();
    boolean isFlat = breadth > depth;
    RectangularSection section =
        new RectangularSection(Math.min(breadth, depth), Math.max(breadth, depth));
    TimberStrength strength = timber.strength();
    double whole = member.to() - member.from();
    double held = member.axis().facet().isEmpty() ? whole : member.longest();
    double overY = isFlat ? held : whole;
    double overZ = isFlat ? whole : held;
    ColumnBuckling column = new ColumnBuckling(strength);
    DesignStrength design = DesignStrength.of(strength, section, timber.basis(combination));
    return new MemberResistance(
        section,
        isFlat,
        design,
        column,
        column.factor(overY, section.radiusY()),
        column.factor(overZ, section.radiusZ()),
        LateralBuckling.factor(strength, section, overZ + 2 * section.depth()),
        SectionTorsion.of(section, 1, design).value());
  }

  /** σ_m,y/f_m,y. */
  double bendingY(Actions actions) {
    return Math.abs(actions.momentY()) / section.modulusY() / design.bendingY();
  }

  /** σ_m,z/f_m,z. */
  double bendingZ(Actions actions) {
    return Math.abs(actions.momentZ()) / section.modulusZ() / design.bendingZ();
  }

  /** σ_c/f_c; 0 in tension. */
  double compression(Actions actions) {
    return Math.max(0, -actions.normal()) / section.area() / design.compression();
  }

  /** σ_t/f_t; 0 in compression. */
  double tension(Actions actions) {
    return Math.max(0, actions.normal()) / section.area() / design.tension();
  }
}
