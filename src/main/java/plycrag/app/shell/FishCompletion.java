package plycrag.app.shell;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What makes the shell fish complete. */
public final class FishCompletion {
  private static final String START = "complete -c plycrag";

  private FishCompletion() {}

  /** The text to source. */
  public static String script(List<CompletedVerb> verbs) {
    Stream<String> names =
        verbs.stream()
            .map(verb -> " -n __fish_use_subcommand -a " + verb.name() + described(verb.brief()));
    return Stream.concat(
            Stream.concat(Stream.of(" -f"), names),
            verbs.stream().flatMap(verb -> arguments(verb).map(one -> behind(verb) + one)))
        .map(line -> START + line + "\n")
        .collect(Collectors.joining());
  }

  private static String behind(CompletedVerb verb) {
    return " -n '__fish_seen_subcommand_from " + verb.name() + "'";
  }

  private static Stream<String> arguments(CompletedVerb verb) {
    Stream<String> options = verb.options().stream().map(FishCompletion::option);
    Stream<String> files = verb.takesFiles() ? Stream.of(" -F") : Stream.empty();
    Stream<String> words = verb.words().isEmpty() ? Stream.empty() : Stream.of(of(verb.words()));
    return Stream.concat(options, Stream.concat(files, words));
  }

  private static String option(CompletedVerb.Flag option) {
    String names =
        option.names().stream()
            .map(
                name ->
                    name.startsWith("--") ? " -l " + name.substring(2) : " -s " + name.charAt(1))
            .collect(Collectors.joining());
    return names + value(option) + described(option.brief());
  }

  private static String value(CompletedVerb.Flag option) {
    if (option.value().isEmpty()) {
      return "";
    }
    return option.takesFile() ? " -r -F" : " -x" + of(option.words());
  }

  private static String of(List<String> words) {
    return words.isEmpty() ? "" : " -a '" + String.join(" ", words) + "'";
  }

  private static String described(String text) {
    return " -d '" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
  }
}
