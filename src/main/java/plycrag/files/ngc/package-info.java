/**
 * Router programs as RS274/NGC, as a controller wants them spelled ({@link
 * plycrag.files.ngc.Dialect}, which {@code app} makes from what a parameter file says of it).
 *
 * <p>Needs a {@link plycrag.document.DrillProgram} whose moves are safe in their order; {@link
 * plycrag.files.ngc.NgcWriter} refuses others, as a defect of their maker. Guarantees, for the
 * plainest controllers, which is the default: lines of at most 72 ASCII characters; first the
 * remarks, then the modes on one line, then one move a line with its G word, last M2; no words but
 * G0 G1 G4 G17 G21 G54 G90 G94 M2 M3 M5 F P S X Y Z; at most three decimals; no line numbers, no
 * percent sign, no canned cycle, no arc, no tool change.
 *
 * <p>On request: G81 and G83 with G99, the places alone on the lines of a series that repeats them,
 * G80 after it; T and M6, or M0, at a change of tool; waits in milliseconds; numbered lines; G20
 * and inches; comments after a semicolon, or none; another greatest length of lines, where a feed
 * that no longer fits stands alone on the line before. Arcs (G2 G3 X Y Z I J F) are written where
 * the program has them: their maker knows whether the controller does.
 *
 * <p>Remarks become comments in capitals. Only A–Z, 0–9, space and {@code . _ - / :} stay; letters
 * lose their accents, a times sign becomes X, any dash or minus a hyphen, and all else a space. No
 * comma stays, since the comments that some controllers act upon ({@code (MSG, …)}, {@code
 * (LOGOPEN, …)}) need one; the few that need none are disarmed by a dash before them.
 */
package plycrag.files.ngc;
