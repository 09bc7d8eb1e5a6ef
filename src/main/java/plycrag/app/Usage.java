package plycrag.app;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import plycrag.units.NearestWord;

/** Answers a wrong command line in a few lines, with what was probably meant. */
final class Usage implements IParameterExceptionHandler {

  /** No verb at all, which is no mistake to be told of: all of them are shown. */
  static final class NoVerb extends ParameterException {
    private static final long serialVersionUID = 1L;

    NoVerb(CommandLine line) {
      super(line, "a verb is missing");
    }
  }

  @Override
  public int handleParseException(ParameterException fault, String[] arguments) {
    CommandLine line = fault.getCommandLine();
    PrintWriter err = line.getErr();
    if (!(fault instanceof NoVerb)) {
      err.println("plycrag: " + fault.getMessage());
    }
    if (fault instanceof UnmatchedArgumentException unmatched) {
      nearest(unmatched, line).ifPresent(known -> err.println("The nearest known is " + known));
    }
    err.print(line.getUsageMessage());
    err.flush();
    return Exit.WRONG_INPUT;
  }

  private static Optional<String> nearest(UnmatchedArgumentException fault, CommandLine line) {
    List<String> known = new ArrayList<>(line.getCommandSpec().optionsMap().keySet());
    known.addAll(line.getSubcommands().keySet());
    return fault.getUnmatched().stream().findFirst().flatMap(word -> NearestWord.find(word, known));
  }
}
