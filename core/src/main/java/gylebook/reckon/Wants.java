package gylebook.reckon;

import java.util.List;
import java.util.stream.Collectors;

/// What a calculation asks for, said to somebody who gave too much or too little.
final class Wants {
  private Wants() {}

  /// An amount that found no place.
  static String homeless(Calculation calculation, Fit.Amounted left) {
    String asks =
        calculation.inputs().stream().map(Wants::withUnit).collect(Collectors.joining(", "));
    return asks.isEmpty()
        ? calculation.name() + " asks for nothing; it has no place for '" + left.text() + "'."
        : calculation.name() + " has no place for '" + left.text() + "'; it asks for " + asks + ".";
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
        + ".";
  }

  private static String withUnit(Input input) {
    return input.unit().isEmpty() ? input.key() : input.key() + " (" + input.unit() + ")";
  }
}
