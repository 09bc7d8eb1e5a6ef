/**
 * Serves a wall that is being worked on to the browser of whoever works on it.
 *
 * <p>Needs: {@link plycrag.app.watch.Showing}, what is shown now; whoever makes one hands it over,
 * or says what is wrong with the last save.
 *
 * <p>Guarantees: it listens on the loopback address alone; answers nobody who names another host,
 * or whose page came from elsewhere, so that no page of another site reads a wall; takes nothing
 * in, and reads nothing from the disk: what it serves is what a build would write. Pages that are
 * open are told of each change in their order; one that lost the connection is told of the last
 * when it comes back.
 *
 * <p>Leaves out: looking for changes, and laying out, which are {@code app}'s.
 */
package plycrag.app.watch;
