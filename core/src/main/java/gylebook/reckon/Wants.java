package gylebook.reckon;

import gylebook.units.Quantity;
import gylebook.units.Typed;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/// What a calculation asks for, said to somebody who gave too much or too little.
final class Wants {
  /// What nobody reads off a label, and the calculation that tells it.
  static final Map<String, String> TOLD_BY =
      Map.of(
          "ua W/K", "chiller-ua-measured",
          "residual meq/L", "residual-alkalinity",
          "held kg/kg", "spent-grain-water",
          "rate K/s", "heating-rate",
          "potential kg", "potential-extract");

  private Wants() {}

  /// An amount that found no place.
  static String homeless(Calculation calculation, Fit.Amounted left) {
    String asks = asks(calculation);
    String none = calculation.name() + " has no place for '" + left.text() + "'";
    if (absolute(calculation, left)) {
      return none
          + " without knowing from where it is counted: write absolute "
          + left.text()
          + ", or ask carbonation if a gauge shows it.";
    }
    return calculation.inputs().isEmpty()
        ? calculation.name() + " asks for nothing; it has no place for '" + left.text() + "'."
        : none + "; " + asks + ".";
  }

  /// `it asks for malt (kg), mash (°C)`.
  static String asks(Calculation calculation) {
    return "it asks for "
        + calculation.inputs().stream().map(Wants::withUnit).collect(Collectors.joining(", "));
  }

  /// A pressure where an absolute one is asked for: most gauges begin at the air's.
  private static boolean absolute(Calculation calculation, Fit.Amounted left) {
    return calculation.inputs().stream().anyMatch(input -> input.words().equals("absolute"))
        && Typed.parse(left.text(), Quantity.PRESSURE) instanceof Typed.Read
        && !left.bare();
  }

  /// What must still be given; empty when nothing.
  static String missing(Calculation calculation, List<Taken> taken) {
    List<String> missing =
        calculation.inputs().stream()
            .filter(input -> input.usual().isEmpty())
            .filter(input -> taken.stream().noneMatch(each -> each.input().equals(input)))
            .map(Wants::withUnit)
            .toList();
    if (missing.isEmpty()) {
      return "";
    }
    String last = missing.getLast();
    String before = String.join(", ", missing.subList(0, missing.size() - 1));
    return calculation.name()
        + " still needs "
        + (before.isEmpty() ? last : before + " and " + last)
        + "."
        + help(calculation, taken);
  }

  private static String help(Calculation calculation, List<Taken> taken) {
    return calculation.inputs().stream()
        .filter(input -> input.usual().isEmpty())
        .filter(input -> taken.stream().noneMatch(each -> each.input().equals(input)))
        .filter(input -> TOLD_BY.containsKey(input.key() + " " + input.unit()))
        .map(
            input ->
                " %s tells %s."
                    .formatted(TOLD_BY.get(input.key() + " " + input.unit()), input.key()))
        .collect(Collectors.joining());
  }

  private static String withUnit(Input input) {
    return input.unit().isEmpty() ? input.key() : input.key() + " (" + input.unit() + ")";
  }
}
