/**
 * What is to be built, as values: facets, their size and attitude, and what they are made of.
 *
 * <p>Needs what a parameter file says, validated. The records {@code Given…} hold that as it was
 * given; {@link plycrag.wall.Profile} stands facets on each other and walls beside each other, and
 * so makes each {@link plycrag.wall.Facet} of a {@link plycrag.wall.Wall}. All else that the file
 * tells of sheets, frame, inserts, screws, joints and distances is a small record of the stage that
 * needs it; the machine, what is bought and what is around the wall have rooms of their own.
 *
 * <p>Guarantees: every facet has an outline in its own (u, v), u to the right as seen from the
 * front, v up the slope, its lowest and its leftmost place at 0; walls that meet in a corner are
 * cut off along the line in which their faces meet, which turns wherever one of them folds ({@link
 * plycrag.wall.Corner}, {@link plycrag.wall.FacetSide}); where one ends lower, the other goes
 * straight up. What meets is a {@link plycrag.wall.Fold} on any side, several on one side where the
 * other wall folds, and both facets have it ({@link plycrag.wall.BoundedFacet}). The room's x runs
 * to the climber's right, y toward the climber, z up: left-handed. A hinged wall has one shape and
 * knows what turns it ({@link plycrag.wall.Swing}, {@link plycrag.wall.FacetAtAngle}).
 *
 * <p>A frame is split for transport by telling two facets of one angle: their plates lie flat on
 * each other and are bolted like those of any fold, so that cuts, joints and drawings need nothing
 * new; a rule says where.
 *
 * <p>A wall that is told to be mirrored is made as it is told and then turned left for right as a
 * value ({@link plycrag.wall.MirroredWall}), once, so that nothing after this room knows both; it
 * only says that what is set out from the left begins on the right ({@code Wall.isMirrored}), which
 * pieces, studs and patterns ask. Where a facet's sides lie on the marking grid, its layout is the
 * image of the other's to the last hole.
 *
 * <p>Leaves out: any place of a piece, member or hole, which is the business of {@code layout}; how
 * a file is written. Sees {@code geometry}, {@code catalog}, {@code prices} and the rooms of {@code
 * wall}.
 */
package plycrag.wall;
