package gylebook.reckon;

import gylebook.units.AnyUnit;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// What results are called where they are read: `boiled volume` and `boiled strength`, not `boiled`
/// twice.
@AnyUnit("names amounts of every unit")
final class Labels {
  private Labels() {}

  /// The only result: what was asked for, and what its own name says beyond that.
  static String alone(String asked, String result) {
    List<String> name = List.of(asked.split("-", -1));
    List<String> more = new ArrayList<>(List.of(result.split("-", -1)));
    more.removeAll(name);
    String words = acidity(String.join(" ", name));
    return more.isEmpty() ? words : words + " (" + result.replace('-', ' ') + ")";
  }

  private static String acidity(String words) {
    return words.replaceAll("\\bph\\b", "pH");
  }

  /// One of several results: with what it measures where another has the same name.
  static String apart(Amount result, List<Amount> all) {
    String words = result.name().replace('-', ' ');
    List<Amount> alike = all.stream().filter(each -> each.name().equals(result.name())).toList();
    if (alike.size() == 1) {
      return words;
    }
    List<String> kinds =
        alike.stream().map(Labels::kind).flatMap(Optional::stream).distinct().toList();
    return kinds.size() == alike.size()
        ? words + " " + kind(result).orElse("")
        : words + " in " + result.unit();
  }

  private static Optional<String> kind(Amount amount) {
    return Unit.all().stream()
        .filter(unit -> unit.symbol().equals(amount.unit()))
        .map(Unit::quantity)
        .map(Labels::word)
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<String> word(Quantity quantity) {
    return switch (quantity) {
      case MASS, SMALL_MASS -> Optional.of("mass");
      case VOLUME -> Optional.of("volume");
      case TEMPERATURE -> Optional.of("temperature");
      case GRAVITY -> Optional.of("strength");
      case POWER -> Optional.of("power");
      case FLOW, MASS_FLOW -> Optional.of("flow");
      default -> Optional.empty();
    };
  }
}
