/**
 * The one list of a wall's views.
 *
 * <p>Needs a checked layout and the plan of its sticks. {@link plycrag.drawing.Portfolio} names
 * every view with its kind and its subject in the order of the printed set; from that list the
 * folder is written, {@code drawings.pdf} is printed, the book takes its figures and tests hold
 * what holds for every view.
 *
 * <p>How the rooms stand: {@link plycrag.drawing.pen.Sketch} and all that draws and writes without
 * knowing what it shows is in {@code pen}; {@code flat} shows what lies in a plane (facets, frames,
 * sheets, sticks); {@code room} what stands in space; {@code template} what is true size to cut or
 * drill by. {@link plycrag.drawing.pen.View}, {@link plycrag.drawing.pen.ViewKind} and {@link
 * plycrag.drawing.pen.PrintedSet} are in {@code pen} too, so that templates are printed like views
 * and need no portfolio.
 *
 * <p>Guarantees: each view is drawn once, when it is first asked for; every one is a {@link
 * plycrag.document.Drawing} in millimetres with a name of its own; one from behind is mirrored and
 * says so; what must not be made is stamped. Leaves out: formats and folders, and templates to
 * drill by hand, whose list follows from the user's printer ({@link
 * plycrag.drawing.template.Templates}). Sees all rooms of {@code drawing} and what these see.
 */
package plycrag.drawing;
