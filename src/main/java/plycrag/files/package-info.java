/**
 * The output folder: complete or not at all.
 *
 * <p>Needs: the whole content of every file, in memory, and what it was made from.
 *
 * <p>Guarantees: at every moment the folder {@code NAME} and its sibling {@code .NAME.old} hold the
 * old content or the new one, never a mixture. Nothing is replaced that the program did not write:
 * a folder is the program's own if its manifest lists every file in it with the content that it
 * has. A file that the manifest lists and that is gone does no harm; a symbolic link is never the
 * program's own.
 *
 * <p>How:
 *
 * <ol>
 *   <li>If {@code NAME} is missing and {@code .NAME.old} is there, an earlier run stopped between
 *       two moves: the old folder moves back.
 *   <li>{@code NAME} must be missing, empty or the program's own.
 *   <li>What else an earlier run left, {@code .NAME.old} or {@code .NAME.new}, is deleted; these
 *       two names belong to the program.
 *   <li>All files and the manifest are written to {@code .NAME.new}.
 *   <li>{@code NAME} moves to {@code .NAME.old}, {@code .NAME.new} to {@code NAME}; if the second
 *       move fails the first is taken back.
 *   <li>{@code .NAME.old} is deleted.
 * </ol>
 *
 * <p>Leaves out: two runs for the same folder at the same time, which must not be; the formats,
 * which have a package each.
 */
package plycrag.files;
