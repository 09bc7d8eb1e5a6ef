/**
 * Verbs, wiring and exit codes: the only room that prints, exits or reads files that a user named.
 *
 * <p>Needs a command line with its streams: a value. {@link plycrag.app.Plycrag} returns a code and
 * never exits. Codes: 0 all well; 1 error findings; 2 the parameter file or the usage is wrong; 3
 * files could not be read or written; 70 a defect of the program. With several files the highest
 * code wins.
 *
 * <ol>
 *   <li>Files that a parameter file names are read here alone ({@link plycrag.app.Inputs}); their
 *       hashes stand in the manifest.
 *   <li>Read, laid out, judged ({@link plycrag.app.Design}). What is bought goes on beside the
 *       verdict.
 *   <li>{@link plycrag.app.Deliverable} lists all files of a folder, each with its writer; {@link
 *       plycrag.app.Dialects} says how programs are spelled for {@code [machine]}.
 *   <li>{@link plycrag.app.ProgramRelease} and {@link plycrag.app.Release} look at programs and
 *       drawings as they will be written; a fault there is a defect.
 *   <li>The folder is replaced whole ({@code files}), or a part of it made in a folder of its own
 *       ({@link plycrag.app.FolderPart}).
 * </ol>
 *
 * <p>{@link plycrag.app.Starter} is a file to start from; {@link plycrag.app.Study} lays many
 * variants out side by side, whose text alone differs ({@link plycrag.app.EditedText}); {@link
 * plycrag.app.shell.CompletedVerb} tells shells what the verbs declare. {@link
 * plycrag.app.Watching} looks for files that were saved, and hands what comes of them to {@code
 * app.watch}. {@link plycrag.app.Progress} alone reads a clock.
 *
 * <p>Guarantees: {@code check} and {@code build} find the same and return the same; nothing is
 * written of a file that is wrong. Leaves out: everything that could be a value in another room.
 * Sees them all.
 */
package plycrag.app;
