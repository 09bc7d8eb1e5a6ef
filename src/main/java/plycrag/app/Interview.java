package plycrag.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plycrag.units.LengthUnit;

/** Asks a person at a terminal; no answer keeps what the starter says. */
final class Interview {
  private final BufferedReader answers;
  private final PrintWriter out;

  /** Asks there. */
  Interview(Terminal terminal) {
    this.answers =
        new BufferedReader(new InputStreamReader(terminal.in(), Charset.defaultCharset()));
    this.out = terminal.out();
  }

  /** Which wall it is to be. */
  Starter starter() {
    return choose("What is it to be like", List.of(Starter.values()));
  }

  /** What the tape on site reads. */
  LengthUnit unit() {
    return "in".equals(choose("Millimetres or inches", List.of("mm", "in")))
        ? LengthUnit.IN
        : LengthUnit.MM;
  }

  /** The starter as its user wants it. */
  StarterText filled(StarterText starter) {
    StarterText text = starter;
    for (Question question : Question.values()) {
      text = ask(question, text);
    }
    return text;
  }

  private StarterText ask(Question question, StarterText text) {
    while (true) {
      Optional<String> typed = line(question.words() + " (Enter keeps the starter's): ");
      StarterText answered = typed.map(one -> question.answer(text, one)).orElse(text);
      Optional<String> wrong = answered.wrong();
      if (wrong.isEmpty()) {
        return answered;
      }
      out.println(wrong.get());
    }
  }

  /** One of a few; the first without an answer. */
  private <T> T choose(String question, List<T> choices) {
    String words = choices.stream().map(Object::toString).collect(Collectors.joining(", "));
    while (true) {
      Optional<String> typed = line(question + " (" + words + ") [" + choices.get(0) + "]: ");
      Optional<T> chosen =
          choices.stream()
              .filter(one -> one.toString().equalsIgnoreCase(typed.orElse(choices.get(0) + "")))
              .findFirst();
      if (chosen.isPresent()) {
        return chosen.get();
      }
      out.println("One of " + words + " is allowed.");
    }
  }

  /** What was typed; nothing for an empty line or where no more comes. */
  private Optional<String> line(String prompt) {
    out.print(prompt);
    out.flush();
    try {
      return Optional.ofNullable(answers.readLine()).map(String::strip).filter(a -> !a.isEmpty());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
