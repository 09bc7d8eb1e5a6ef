/**
 * Drilling programs as RS274/NGC, for the plainest controllers.
 *
 * <p>Needs a {@link plycrag.document.DrillProgram} whose moves are safe in their order; {@link
 * plycrag.files.ngc.NgcWriter} refuses others, as a defect of their maker. Guarantees: lines of at
 * most 72 ASCII characters; first the remarks, then the modes on one line, then one move a line
 * with its G word, last M2; no words but G0 G1 G4 G17 G21 G54 G90 G94 M2 M3 M5 F P S X Y Z; at most
 * three decimals; no line numbers, no percent sign, no canned cycle, no arc, no tool change.
 *
 * <p>Remarks become comments in parentheses, in capitals. Only A–Z, 0–9, space and {@code . _ - /
 * :} stay; letters lose their accents, a times sign becomes X, any dash or minus a hyphen, and all
 * else a space. No comma stays, since the comments that some controllers act upon ({@code (MSG,
 * …)}, {@code (LOGOPEN, …)}) need one; the few that need none are disarmed by a dash before them.
 */
package plycrag.files.ngc;
