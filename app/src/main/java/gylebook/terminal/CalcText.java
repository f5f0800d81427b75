package gylebook.terminal;

import gylebook.reckon.Calculation;
import gylebook.reckon.Input;
import gylebook.reckon.Opinion;
import gylebook.reckon.Origin;
import gylebook.reckon.Output;
import gylebook.reckon.Reckoning;
import gylebook.reckon.Taken;
import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;

/// Writes calculations for people.
final class CalcText {
  private final PrintWriter out;

  CalcText(PrintWriter out) {
    this.out = out;
  }

  void list(List<Calculation> calculations) {
    int wide = calculations.stream().mapToInt(c -> c.name().length()).max().orElse(0);
    String group = "";
    for (Calculation calculation : calculations) {
      if (!calculation.group().equals(group)) {
        group = calculation.group();
        out.println();
        out.println(group);
      }
      out.println("  " + padded(calculation.name(), wide) + "  " + calculation.says());
    }
    out.println();
    out.println("calc NAME explains one; calc NAME key=value ... does it;");
    out.println("plain words do as well: calc boiling point at 1200 m.");
  }

  void explain(Calculation calculation) {
    out.println(calculation.name());
    out.println("  " + calculation.says());
    out.println("  equation: " + calculation.equation());
    out.println("  holds:    " + calculation.range());
    out.println("  asks for:");
    int wide = calculation.inputs().stream().mapToInt(i -> i.key().length()).max().orElse(0);
    for (Input input : calculation.inputs()) {
      out.println(("    " + padded(input.key(), wide) + "  " + asked(input)).stripTrailing());
    }
    out.println("  gives:");
    for (Output output : calculation.outputs()) {
      out.println(("    " + output.name() + "  " + output.unit()).stripTrailing());
    }
    sources(calculation.sources());
    out.println("  for example: calc " + calculation.name() + example(calculation));
  }

  void answer(Calculation calculation, Reckoning.Answer answer, List<Opinion> opinions) {
    answer.lines(calculation).forEach(line -> out.println(line.words()));
    answer.remarks().forEach(out::println);
    out.println(
        "  from "
            + answer.inputs().stream()
                .map(input -> input.name() + " " + input.shown())
                .collect(Collectors.joining(", ")));
    out.println("  by " + calculation.equation());
    answer.cautions().forEach(caution -> out.println("  caution: " + caution));
    for (Opinion opinion : opinions) {
      out.println(
          "  %s is %s here, %s by %s"
              .formatted(
                  opinion.question(),
                  opinion.own().shown(),
                  opinion.amount().shown(),
                  opinion.calculation().name()));
    }
    sources(answer.sources());
  }

  /// Which typed amount was taken for which input.
  static String taken(Taken taken) {
    String how = taken.how().isEmpty() ? "" : ", which is " + taken.value() + ": " + taken.how();
    return "'" + taken.typed() + "' was taken for " + taken.input().words() + how + ".";
  }

  private void sources(List<Origin> sources) {
    sources.forEach(source -> out.println("  source: " + source.words()));
  }

  private static String asked(Input input) {
    String bare = input.javaName().endsWith("Frac") ? "0 to 1, or %" : "a number";
    String unit = input.text() ? "words" : input.unit().isEmpty() ? bare : input.unit();
    return input.usual().isPresent()
        ? unit + ", usually " + plain(input.usual().getAsDouble())
        : unit;
  }

  private static String example(Calculation calculation) {
    String needed =
        calculation.inputs().stream()
            .filter(input -> input.usual().isEmpty())
            .map(input -> " " + input.key() + "=...")
            .collect(Collectors.joining());
    if (!needed.isEmpty() || calculation.inputs().isEmpty()) {
      return needed;
    }
    return " " + calculation.inputs().getFirst().key() + "=...";
  }

  private static String plain(Number value) {
    String text = value.toString();
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  private static String padded(String text, int wide) {
    return text + " ".repeat(Math.max(0, wide - text.length()));
  }
}
