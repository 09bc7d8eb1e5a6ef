/**
 * Scripts that make shells complete what the program's verbs declare.
 *
 * <p>Needs: the command line with all its verbs. Guarantees: whatever is declared there is
 * completed, and nothing else; the same text everywhere. Leaves out: bash, whose script is
 * picocli's.
 */
package plycrag.app.shell;
