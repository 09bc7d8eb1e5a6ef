/**
 * Sets the timber that holds a run of facets up.
 *
 * <p>Needs the back of every facet's frame in section (y toward the climber, z up, in the axes of
 * the run), the places of the studs that may bear, and a section for each use of timber ({@link
 * plycrag.solve.support.SupportSite.Timber}). Knows lengths and planes only: no facet, hole or
 * price.
 *
 * <ol>
 *   <li>Stations: the first and the last stud, and between them as few as keep the greatest
 *       distance.
 *   <li>Levels: one a facet, so far below its upper edge that what holds its plate to the studs has
 *       room above, further down where inserts are in the way ({@link
 *       plycrag.solve.support.BackEdge#lower}), in the middle of a frame too low for that. At each
 *       level and station something level, upright or slanting ends flat on the back of the frame,
 *       in line with the stud; braces from the floor behind low folds stand within the outer studs.
 *       Under an edge that slants or steps side frames are as high as it is at their own station
 *       ({@link plycrag.solve.support.BackEdge#at}); what hangs or is fixed is met as high as the
 *       lowest station allows, and once more above where the edge rises by much ({@link
 *       plycrag.solve.support.FixedTies}).
 *   <li>What those members end on: posts on rails, a ledger on a wall or under a ceiling, the
 *       floor. On a rail a heel stands behind each stud and along it, cut level at its foot ({@link
 *       plycrag.solve.support.Foot}).
 *   <li>Braces: in each panel between levels, and across the posts. A beam and a sill lie along the
 *       backs of the posts and run past the outer ones; between them one brace over the first bay
 *       and one over the last lean against each other, the second lower where both end on one post.
 *       Knee braces under a beam stand between the posts and not on their backs, so that two meet
 *       opposite sides of a post ({@link plycrag.solve.support.PostRow}). Their reach is cut to the
 *       room there is; where less is left than an end cut needs, the support says that it sways,
 *       and a rule tells.
 * </ol>
 *
 * <p>Everything of one station lies in the stud's own plane. Guarantees that every end lies flat on
 * what it meets, and that what is level lies on the marking grid. Leaves strength out. A level that
 * nothing of the kind can hold is told with what would do ({@link plycrag.solve.support.Unheld}),
 * not left out silently.
 */
package plycrag.solve.support;
