package plycrag.app.shell;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What makes the shell zsh complete. */
public final class ZshCompletion {
  private static final String SCRIPT =
      """
      #compdef plycrag
      _plycrag() {
        local -a verbs
        verbs=(
      VERBS  )
        if (( CURRENT == 2 )); then
          _describe verb verbs
          return
        fi
        shift words
        (( CURRENT-- ))
        case $words[1] in
      ARGUMENTS  esac
      }
      if [[ $funcstack[1] == _plycrag ]]; then
        _plycrag "$@"
      else
        compdef _plycrag plycrag
      fi
      """;

  private ZshCompletion() {}

  /** The text to source, or to be found as {@code _plycrag}. */
  public static String script(List<CompletedVerb> verbs) {
    return SCRIPT
        .replace(
            "VERBS",
            verbs.stream()
                .map(verb -> "    '" + verb.name() + ":" + escaped(verb.brief(), ":") + "'\n")
                .collect(Collectors.joining()))
        .replace(
            "ARGUMENTS",
            verbs.stream().map(ZshCompletion::arguments).collect(Collectors.joining()));
  }

  private static String arguments(CompletedVerb verb) {
    Stream<String> options = verb.options().stream().flatMap(ZshCompletion::option);
    String rest = verb.words().isEmpty() ? "" : "*:word:(" + String.join(" ", verb.words()) + ")";
    String last = verb.takesFiles() ? "*:file:_files" : rest;
    return Stream.concat(options, Stream.of(last).filter(one -> !one.isEmpty()))
        .map(one -> " \\\n        '" + one + "'")
        .collect(Collectors.joining("", "    " + verb.name() + ") _arguments", " ;;\n"));
  }

  private static Stream<String> option(CompletedVerb.Flag option) {
    return option.names().stream()
        .map(name -> name + "[" + escaped(option.brief(), "[", "]") + "]" + value(option));
  }

  private static String value(CompletedVerb.Flag option) {
    if (option.value().isEmpty()) {
      return "";
    }
    String words = option.words().isEmpty() ? " " : "(" + String.join(" ", option.words()) + ")";
    return ":" + option.value() + ":" + (option.takesFile() ? "_files" : words);
  }

  /** Within single quotes, with the signs that the shell's own language uses made plain. */
  private static String escaped(String text, String... signs) {
    String escaped = text.replace("'", "'\\''");
    for (String sign : signs) {
      escaped = escaped.replace(sign, "\\" + sign);
    }
    return escaped;
  }
}
