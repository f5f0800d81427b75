package gylebook.terminal;

import gylebook.reckon.Asked;
import gylebook.reckon.Calculation;
import gylebook.reckon.Opinion;
import gylebook.reckon.Question;
import gylebook.reckon.Reckoner;
import gylebook.reckon.Reckoning;
import gylebook.reckon.Search;
import gylebook.reckon.SecondMethods;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/// `calc` lists the single calculations, `calc NAME` explains one, `calc NAME key=value ...` does
/// it, and so does a line in plain words: `calc boiling point at 1200 m`.
///
/// It writes to the writers of its command line. Code 0 is an answer, 2 is a request that cannot be
/// met, with a sentence on the error writer.
@Command(
    name = "calc",
    mixinStandardHelpOptions = true,
    description = "Does one calculation, with its source: without a name it lists them.")
public final class CalcCommand implements Callable<Integer> {
  private static final int ANSWERED = 0;
  private static final int REFUSED = 2;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "NAME",
      description =
          "The calculation, explained without inputs; or plain words: boiling point at 1200 m.")
  private @Nullable String name;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "KEY=VALUE",
      description = "Inputs in any unit: wort=66c, altitude=4000ft.")
  private List<String> inputs = List.of();

  @Option(names = "--json", description = "Write JSON: unrounded values with their units.")
  private boolean json;

  @Option(
      names = "--units",
      paramLabel = "SET",
      description = "Read in: ${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).")
  private ReadingSet units = ReadingSet.metric;

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    CommandLine line = Objects.requireNonNull(spec, "picocli sets spec").commandLine();
    PrintWriter out = line.getOut();
    int code = name == null ? list(out) : named(name, out, line.getErr());
    out.flush();
    return code;
  }

  private int list(PrintWriter out) {
    if (json) {
      out.println(CalcJson.list(Reckoner.all()));
    } else {
      new CalcText(out).list(Reckoner.all());
    }
    return ANSWERED;
  }

  private int named(String wanted, PrintWriter out, PrintWriter err) {
    boolean keys = inputs.stream().allMatch(input -> input.indexOf('=') > 0);
    return switch (Reckoner.find(wanted)) {
      case Search.Hit hit when keys ->
          inputs.isEmpty() ? explain(hit.calculation(), out) : reckon(hit.calculation(), out, err);
      case Search.Miss miss when inputs.isEmpty() && !wanted.contains(" ") ->
          refuse(err, miss.sentence() + (miss.nearest().isEmpty() ? " calc lists them all." : ""));
      default -> asked(wanted + " " + String.join(" ", inputs), out, err);
    };
  }

  /// A line in plain words.
  private int asked(String line, PrintWriter out, PrintWriter err) {
    return switch (Question.read(line, units.units())) {
      case Asked.Unclear unclear -> {
        String near =
            unclear.near().stream().map(Calculation::name).collect(Collectors.joining(", "));
        yield refuse(err, unclear.sentence() + (near.isEmpty() ? "" : " Near: " + near + "."));
      }
      case Asked.Meant meant when !meant.missing().isEmpty() ->
          refuse(err, String.join(" ", sentences(meant)));
      case Asked.Meant meant -> {
        Reckoning reckoning = meant.calculation().reckon(meant.typed(), units.units());
        yield switch (reckoning) {
          case Reckoning.Unanswered refused -> refuse(err, refused.sentence());
          case Reckoning.Answer answer -> say(meant, answer, out);
        };
      }
    };
  }

  private static List<String> sentences(Asked.Meant meant) {
    List<String> sentences = new ArrayList<>(List.of(meant.missing()));
    meant.taken().forEach(taken -> sentences.add(CalcText.taken(taken)));
    sentences.addAll(meant.remarks());
    return sentences;
  }

  private int say(Asked.Meant meant, Reckoning.Answer answer, PrintWriter out) {
    List<Opinion> opinions =
        SecondMethods.beside(meant.calculation(), meant.typed(), answer, units.units());
    if (json) {
      out.println(CalcJson.answer(meant.calculation(), answer, opinions));
    } else {
      out.println(meant.calculation().name() + ": " + meant.calculation().says());
      new CalcText(out).answer(meant.calculation(), answer, opinions);
      meant.taken().forEach(taken -> out.println("  " + CalcText.taken(taken)));
      meant.remarks().forEach(remark -> out.println("  " + remark));
    }
    return ANSWERED;
  }

  private int explain(Calculation calculation, PrintWriter out) {
    if (json) {
      out.println(CalcJson.explain(calculation));
    } else {
      new CalcText(out).explain(calculation);
    }
    return ANSWERED;
  }

  private int reckon(Calculation calculation, PrintWriter out, PrintWriter err) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (String input : inputs) {
      Optional<String> fault = take(input, typed);
      if (fault.isPresent()) {
        return refuse(err, fault.get());
      }
    }
    return switch (calculation.reckon(typed, units.units())) {
      case Reckoning.Unanswered refused -> refuse(err, refused.sentence());
      case Reckoning.Answer answer -> {
        List<Opinion> opinions = SecondMethods.beside(calculation, typed, answer, units.units());
        if (json) {
          out.println(CalcJson.answer(calculation, answer, opinions));
        } else {
          new CalcText(out).answer(calculation, answer, opinions);
        }
        yield ANSWERED;
      }
    };
  }

  private static Optional<String> take(String input, Map<String, String> typed) {
    int at = input.indexOf('=');
    if (at <= 0) {
      return Optional.of(
          "'" + input + "' is no input; write key=value, and put quotes around one with spaces.");
    }
    String key = input.substring(0, at).strip();
    return typed.put(key, input.substring(at + 1)) == null
        ? Optional.empty()
        : Optional.of(key + " is given twice.");
  }

  private static int refuse(PrintWriter err, String sentence) {
    err.println(sentence);
    err.flush();
    return REFUSED;
  }
}
