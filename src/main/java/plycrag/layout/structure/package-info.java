/**
 * The wall as a frame in space under loads: what {@code solve.frame} is asked, and how its answers
 * are read back as parts of the wall.
 *
 * <p>Needs a whole {@link plycrag.layout.Layout} with what holds its joints, what is told of the
 * loads, and how stiff the timber is. Axes are the room's; N, mm and N mm.
 *
 * <ol>
 *   <li>Each member becomes a line through the middle of its section, from end face to end face
 *       ({@link plycrag.layout.structure.MemberAxis}).
 *   <li>Where something holds or loads it, the line has a station; between stations it bends
 *       ({@link plycrag.layout.structure.AxisStations}).
 *   <li>Joints connect stations where the contact is, on rigid arms, so that what is eccentric is
 *       computed so ({@link plycrag.layout.structure.JointLinks}). An end on a side passes no
 *       moment about what is square to both members; what lies side by side passes forces alone at
 *       its first and last fastener. The same wall is also solved with every joint stiff, and the
 *       worse of both counts. A joint that nothing holds connects nothing.
 *   <li>The floor only pushes up; nothing rubs on it. Where no anchor holds the wall, three simple
 *       supports along the floor keep it from drifting ({@link
 *       plycrag.layout.structure.GroundSupports}). Anchors hold their place and let it turn.
 *       Tethers only pull, struts push too; backups hang slack.
 *   <li>Each sheet with four corners is a panel that resists racking, less what its screws give
 *       ({@link plycrag.layout.structure.SheetPanels}). Every wall is also solved without.
 *   <li>Its weight acts along members ({@link plycrag.layout.structure.SelfWeight}); climbers act
 *       on the nearest stud wholly, at the tip of a hold ({@link
 *       plycrag.layout.structure.ClimberPlaces}), in combinations of EN 1990 ({@link
 *       plycrag.layout.structure.LoadCases}).
 * </ol>
 *
 * <p>Guarantees the same frame for the same wall, mirrored for a mirrored one. Leaves out: the
 * lever rule between studs, which loads no stud more; wind, snow and earthquakes; prying of what is
 * anchored in a line; whether anything holds, which {@code check.structure} judges.
 */
package plycrag.layout.structure;
