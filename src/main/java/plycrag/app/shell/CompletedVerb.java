package plycrag.app.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * What a shell completes behind a verb.
 *
 * @param name the verb
 * @param brief what it does, in a sentence
 * @param options what may follow
 * @param words what else may follow; empty for files, if it takes any
 * @param takesFiles whether files may follow
 */
public record CompletedVerb(
    String name, String brief, List<Flag> options, List<String> words, boolean takesFiles) {

  /**
   * An option.
   *
   * @param names each with its hyphens
   * @param brief what it does
   * @param value what follows it; empty for nothing
   * @param words what may follow it; empty for anything
   * @param takesFile whether a file or a folder follows
   */
  public record Flag(
      List<String> names, String brief, String value, List<String> words, boolean takesFile) {}

  /** All verbs of a command line, in its order. */
  public static List<CompletedVerb> of(CommandLine line) {
    List<String> verbs = List.copyOf(line.getSubcommands().keySet());
    return line.getSubcommands().values().stream().map(verb -> of(verb, verbs)).toList();
  }

  private static CompletedVerb of(CommandLine verb, List<String> verbs) {
    List<ArgSpec> takes = List.copyOf(verb.getCommandSpec().positionalParameters());
    boolean isHelp = verb.getCommandName().equals("help");
    return new CompletedVerb(
        verb.getCommandName(),
        brief(told(verb)),
        verb.getCommandSpec().options().stream().map(CompletedVerb::flag).toList(),
        isHelp ? verbs : takes.stream().flatMap(one -> words(one).stream()).toList(),
        takes.stream().anyMatch(CompletedVerb::isFile));
  }

  private static String[] told(CommandLine verb) {
    String[] header = verb.getCommandSpec().usageMessage().header();
    return header.length > 0 ? header : verb.getCommandSpec().usageMessage().description();
  }

  private static Flag flag(OptionSpec option) {
    boolean takesValue = option.arity().max() > 0;
    return new Flag(
        List.of(option.names()),
        brief(option.description())
            .replace("${COMPLETION-CANDIDATES}", String.join(", ", words(option)))
            .replace("${DEFAULT-VALUE}", String.valueOf(option.defaultValue())),
        takesValue ? option.paramLabel() : "",
        words(option),
        isFile(option));
  }

  private static boolean isFile(ArgSpec argument) {
    return argument.type() == Path.class || List.of(argument.auxiliaryTypes()).contains(Path.class);
  }

  private static List<String> words(ArgSpec argument) {
    return argument.completionCandidates() == null
        ? List.of()
        : StreamSupport.stream(argument.completionCandidates().spliterator(), false).toList();
  }

  /** The first sentence, without its stop. */
  private static String brief(String... description) {
    String text = String.join(" ", description);
    int end = text.indexOf(". ");
    String first = end < 0 ? text : text.substring(0, end);
    return first.endsWith(".") ? first.substring(0, first.length() - 1) : first;
  }
}
