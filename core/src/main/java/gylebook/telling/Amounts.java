package gylebook.telling;

import gylebook.telling.Blank.Unfit;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Typed;
import gylebook.units.Unit;
import gylebook.units.UnitName;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/// Amounts as they are shown in sentences and read from them.
@AnyUnit("amounts of every quantity; the name beside each says its unit")
final class Amounts {
  private static final int MOST_WORDS = 2000;

  /// What must be more than nothing to make sense.
  private static final Set<String> POSITIVE =
      Set.of("lengthL", "strengthPlato", "massKg", "massG", "holdSec", "evaporationLPerSec");

  private Amounts() {}

  /// An amount as typed.
  ///
  /// @throws Unfit with what is wrong
  static Entered read(String text, Unit usual, String path) {
    return switch (Typed.parse(text, usual)) {
      case Typed.Read(Entered entered) -> positive(entered, path);
      case Typed.Unclear unclear -> throw new Unfit(unclear.what(), unclear.maybe());
    };
  }

  private static Entered positive(Entered entered, String path) {
    String name = path.substring(path.lastIndexOf('.') + 1);
    if (POSITIVE.contains(name) && !(entered.inside() > 0)) {
      throw new Unfit("This must be more than nothing.", "Type an amount above 0.");
    }
    return entered;
  }

  /// A plain number whose unit stands in its name, read back in that unit.
  static double number(String text, String name, ReadingUnits units) {
    Optional<Unit> inside = UnitName.of(name).flatMap(UnitName::unit);
    if (inside.isPresent()) {
      Unit usual = units.unit(inside.get().quantity());
      return inside.get().fromInside(read(text, usual, name).inside());
    }
    String symbol = UnitName.of(name).map(UnitName::symbol).orElse("");
    String bare = text.strip();
    if (!symbol.isEmpty() && bare.endsWith(symbol)) {
      bare = bare.substring(0, bare.length() - symbol.length()).strip();
    }
    return read(bare, Unit.known(Quantity.NUMBER, Quantity.NUMBER.inside().symbol()), name)
        .inside();
  }

  /// A number as it is read, in the unit that its name says.
  static String shown(String name, double value, ReadingUnits units) {
    Optional<Unit> inside = UnitName.of(name).flatMap(UnitName::unit);
    if (inside.isPresent()) {
      return units.shown(inside.get().quantity(), inside.get().toInside(value));
    }
    String symbol = UnitName.of(name).map(UnitName::symbol).orElse("");
    return (figures(value) + " " + symbol).strip();
  }

  private static String figures(double value) {
    double size = Math.abs(value);
    if (size != 0 && (size < 0.01 || size >= 1e6)) {
      return String.format(Locale.ROOT, "%.3g", value);
    }
    String plain = String.format(Locale.ROOT, "%.4f", value);
    return plain.replaceAll("0+$", "").replaceAll("\\.$", "");
  }

  /// Words as typed, without what no page can show.
  static String clean(String text) {
    String clean = text.strip().replaceAll("\\p{Cntrl}+", " ");
    if (clean.length() > MOST_WORDS) {
      throw new Unfit(
          "These are " + clean.length() + " characters.", "Keep it under " + MOST_WORDS + ".");
    }
    return clean;
  }
}
