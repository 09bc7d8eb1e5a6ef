/**
 * Verbs, wiring and exit codes: the only room that prints, exits or reads files that a user named.
 *
 * <p>The command line is a value: {@link plycrag.app.Plycrag} gets its streams, returns a code and
 * never exits. Codes: 0 all well; 1 error findings; 2 the parameter file or the usage is wrong; 3
 * files could not be read or written; 70 a defect of the program. With several files the highest
 * code wins.
 */
package plycrag.app;
