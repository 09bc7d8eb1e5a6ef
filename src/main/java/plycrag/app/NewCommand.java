package plycrag.app;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import plycrag.read.ParameterSchema;
import plycrag.units.LengthUnit;

/** Writes a parameter file to start from. */
@Command(
    name = "new",
    mixinStandardHelpOptions = true,
    description =
        "Writes NAME.toml to start from, and plycrag.schema.json beside it, by which editors"
            + " complete and check it; never over a file that is there. Asks a few questions at a"
            + " terminal, unless an option answers.")
final class NewCommand implements Callable<Integer> {
  static final String SCHEMA = "plycrag.schema.json";
  private static final String ENDING = ".toml";

  @Parameters(paramLabel = "NAME", description = "The wall's name, or a path that ends in it.")
  private Path name;

  @Option(
      names = "--like",
      paramLabel = "KIND",
      description = "One of ${COMPLETION-CANDIDATES}; leaning by default.")
  private Starter like;

  @Option(
      names = "--unit",
      paramLabel = "UNIT",
      description = "What your tape reads and bare numbers mean: mm by default, or in.")
  private LengthUnit unit;

  @Option(names = "--width", paramLabel = "LENGTH", description = "Width of the wall.")
  private String width;

  @Option(
      names = "--angle",
      paramLabel = "DEGREES",
      description = "Angle from vertical; above zero it leans out over the climber.")
  private String angle;

  @Option(
      names = "--ceiling",
      paramLabel = "LENGTH",
      description = "Height of the ceiling above the floor.")
  private String ceiling;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    Path file = file();
    if (Files.exists(file)) {
      return refuse(file, "there is such a file already; it is left as it is");
    }
    String text = text(new Source(file).stem()).text();
    try {
      Files.writeString(file, text, StandardOpenOption.CREATE_NEW);
      tell(file, writeSchema(file.resolveSibling(SCHEMA)));
      return Exit.WELL;
    } catch (FileAlreadyExistsException e) {
      return refuse(file, "there is such a file already; it is left as it is");
    } catch (NoSuchFileException e) {
      return refuse(file, "there is no such folder");
    } catch (IOException e) {
      return refuse(file, "could not be written: " + e.getMessage());
    }
  }

  private Path file() {
    String last = String.valueOf(name.getFileName());
    return last.endsWith(ENDING) ? name : name.resolveSibling(last + ENDING);
  }

  private int refuse(Path file, String why) {
    Terminal.of(spec).err().println(file + ": " + why);
    return Exit.FILES;
  }

  private StarterText text(String stem) {
    Map<Question, String> given = given();
    boolean isTold = like != null || unit != null || !given.isEmpty();
    Terminal terminal = Terminal.of(spec);
    if (terminal.isInteractive() && !isTold) {
      Interview interview = new Interview(terminal);
      StarterText chosen = interview.starter().text(interview.unit());
      return interview.filled(named(chosen, stem));
    }
    Starter starter = Optional.ofNullable(like).orElse(Starter.LEANING);
    LengthUnit tape = Optional.ofNullable(unit).orElse(LengthUnit.MM);
    StarterText text = named(starter.text(tape), stem);
    for (Map.Entry<Question, String> answer : given.entrySet()) {
      text = sound(answer.getKey().answer(text, answer.getValue()));
    }
    return text;
  }

  private Map<Question, String> given() {
    Map<Question, String> given = new EnumMap<>(Question.class);
    Optional.ofNullable(width).ifPresent(typed -> given.put(Question.WIDTH, typed));
    Optional.ofNullable(angle).ifPresent(typed -> given.put(Question.ANGLE, typed));
    Optional.ofNullable(ceiling).ifPresent(typed -> given.put(Question.CEILING, typed));
    return given;
  }

  /** A file's name begins small and has hyphens; what is printed on everything does not. */
  private StarterText named(StarterText text, String stem) {
    String words = stem.replace('-', ' ').replace('_', ' ');
    String shown = words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT);
    return sound(text.with("name", shown + words.substring(shown.length())));
  }

  private StarterText sound(StarterText text) {
    text.wrong()
        .ifPresent(
            wrong -> {
              throw new ParameterException(spec.commandLine(), wrong);
            });
    return text;
  }

  /** What became of the schema, as the end of a sentence. */
  private static String writeSchema(Path schema) throws IOException {
    String text = ParameterSchema.json();
    if (!Files.exists(schema)) {
      Files.writeString(schema, text, StandardOpenOption.CREATE_NEW);
      return "and " + schema + " for editors";
    }
    return Files.readString(schema).equals(text)
        ? "whose schema is there already"
        : "but left " + schema + " as it is, which is not this version's";
  }

  private void tell(Path file, String schema) {
    Terminal.of(spec).out().println("Wrote " + file + ", " + schema + ".");
    Terminal.of(spec).out().println("Next: " + Plycrag.NAME + " view " + file);
  }
}
