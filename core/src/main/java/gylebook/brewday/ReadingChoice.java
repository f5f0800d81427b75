package gylebook.brewday;

import gylebook.journal.Event;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/// What somebody chose to read in, applied.
final class ReadingChoice {
  /// The sets by their words.
  static final List<String> SETS = List.of("metric", "us", "imperial");

  private ReadingChoice() {}

  /// The reading units after one more choice; empty when there is no such set, quantity or unit.
  static Optional<ReadingUnits> applied(ReadingUnits before, Event.UnitsChosen chosen) {
    if (chosen.quantity().isEmpty()) {
      return switch (chosen.symbol()) {
        case "metric" -> Optional.of(ReadingUnits.METRIC);
        case "us" -> Optional.of(ReadingUnits.US);
        case "imperial" -> Optional.of(ReadingUnits.IMPERIAL);
        default -> Optional.empty();
      };
    }
    return Stream.of(Quantity.values())
        .filter(quantity -> quantity.name().equals(chosen.quantity()))
        .findFirst()
        .flatMap(quantity -> Unit.of(quantity, chosen.symbol()))
        .map(before::with);
  }
}
