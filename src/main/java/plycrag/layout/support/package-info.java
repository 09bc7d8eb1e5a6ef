/**
 * Timber that holds the frames up, as members of the wall: cut, listed and marked like any other.
 *
 * <p>Needs the framed facets, what holds each of them ({@code wall.room.Supports}) and where the
 * building is. Facets that stand on each other and are held alike are held together, as a part
 * ({@link plycrag.layout.support.SupportPlan}); what {@code needsFoot} holds none that stand on
 * another part. {@code solve.support} says what stands where, in section; this room turns that into
 * members in planes of their own ({@link plycrag.layout.support.PlacedMember}), finds what of the
 * frame they meet, and sets anchors and tethers ({@link plycrag.layout.support.SupportPart}).
 *
 * <p>All timber of one station lies in the plane of a stud, behind it: members meet end on side,
 * and none reaches where bolts end. Stations stand where plywood on both sides of the stud keeps
 * clear of inserts and of other studs, if that keeps {@code [support] bay}; what ends on a stud
 * ends between the inserts and the blocking beside it ({@link
 * plycrag.layout.support.BearingStuds}). Where an upper edge slants or steps, each stud that
 * reaches it bears ({@link plycrag.layout.support.UpperEdges}): posts are as high as their own,
 * ledgers lie level with the lowest. Ledgers under joists go on to the next joist beyond the outer
 * hanger where the room has the width ({@link plycrag.layout.support.JoistReach}). A frame on posts
 * stands on the base rails instead of the floor ({@code Wall.base}, {@link
 * plycrag.layout.frame.Footing}), and heels behind its studs stand on them too. Where the studs of
 * a facet are not in line with those above, ties and hangers stand at studs of its own; posts,
 * which pass all levels, stand in line where that keeps {@code [support] bay}, else at the highest
 * facet's studs, and meet the plates of those below.
 *
 * <p>Guarantees: each member's joints are told, with the frame and among themselves; a facet that
 * this kind of support cannot hold is named ({@code SupportPart.unheld}), and a frame that sways
 * says so. Leaves out: strength, what holds the joints, and any judgement. Sees the rooms up to
 * {@code layout.facet}, and {@code solve.support}.
 */
package plycrag.layout.support;
