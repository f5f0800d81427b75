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
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/// Amounts as they are shown in sentences and read from them.
@AnyUnit("amounts of every quantity; the name beside each says its unit")
final class Amounts {
  private static final int MOST_WORDS = 2000;
  private static final String ALTITUDE = "altitude";

  /// What must be more than nothing to make sense.
  private static final Set<String> POSITIVE =
      Set.of(
          "lengthL",
          "strengthPlato",
          "massKg",
          "massG",
          "holdSec",
          "evaporationLPerSec",
          "amountNumber");

  /// What may be below nothing although a share may not.
  private static final Set<String> SIGNED = Set.of("attenuationOffsetFrac");

  private static final double G_PER_KG = 1000;

  /// Below this a measuring jug is of no use.
  private static final double SYRINGE_L = 0.1;

  /// Names of components, read once each: a page asks for hundreds of them.
  private static final Map<String, Optional<UnitName>> NAMES = new ConcurrentHashMap<>();

  private Amounts() {}

  private static Optional<UnitName> named(String name) {
    return NAMES.computeIfAbsent(name, UnitName::of);
  }

  /// The unit that a component's name says, where that is one of the table.
  static Optional<Unit> inside(String name) {
    return named(name).flatMap(UnitName::unit);
  }

  private static String symbol(String name) {
    return named(name).map(UnitName::symbol).orElse("");
  }

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
    return number(text, name, inside(name).map(u -> usual(name, u.quantity(), units)));
  }

  /// The same where a bare number is in a unit of the reader's.
  ///
  /// @param usual that unit; empty where the name's own unit is none of the table
  static double number(String text, String name, Optional<Unit> usual) {
    Optional<Unit> inside = inside(name);
    if (inside.isPresent()) {
      boolean below = SIGNED.contains(name) && text.strip().matches("[-\u2212].*");
      String size = below ? text.strip().substring(1) : text;
      double read = read(size, usual.orElse(inside.get()), name).inside();
      double value = inside.get().fromInside(read);
      return below ? -value : value;
    }
    String symbol = symbol(name);
    String bare = text.strip();
    if (!symbol.isEmpty() && bare.endsWith(symbol)) {
      bare = bare.substring(0, bare.length() - symbol.length()).strip();
    }
    return read(bare, Unit.known(Quantity.NUMBER, Quantity.NUMBER.inside().symbol()), name)
        .inside();
  }

  /// The unit that something is shown in, which is what a bare number typed over it means: over `12
  /// d` it is days, whatever the reader's usual unit of time.
  static Unit over(String shown, Unit usual) {
    int space = shown.indexOf(' ');
    return space < 0 ? usual : Unit.of(usual.quantity(), shown.substring(space + 1)).orElse(usual);
  }

  /// A number as it is read, in the unit that its name says.
  static String shown(String name, double value, ReadingUnits units) {
    Optional<Unit> inside = inside(name);
    if (name.startsWith(ALTITUDE) && inside.isPresent()) {
      Unit unit = usual(name, Quantity.LENGTH, units);
      return figures(Math.rint(unit.fromInside(value))) + " " + unit.symbol();
    }
    if (inside.isPresent() && inside.get().quantity() != Quantity.NUMBER) {
      return units.shown(inside.get().quantity(), inside.get().toInside(value));
    }
    String symbol = symbol(name);
    return (figures(value) + " " + symbol).strip();
  }

  /// An amount as it is read; a count without decimals that say nothing.
  static String shown(Entered entered, ReadingUnits units) {
    return entered.unit().quantity() == Quantity.NUMBER
        ? figures(entered.inside())
        : units.shown(entered);
  }

  /// The unit of what is weighed on the small scales, whichever scales its amount names.
  static Unit small(Unit unit, ReadingUnits units) {
    boolean mass = unit.quantity() == Quantity.MASS;
    return units.unit(mass ? Quantity.SMALL_MASS : unit.quantity());
  }

  /// An amount of something that is weighed on the small scales.
  static String shownSmall(Entered entered, ReadingUnits units) {
    if (entered.unit().quantity() == Quantity.VOLUME) {
      return shownVolume(entered.inside(), units);
    }
    return entered.unit().quantity() == Quantity.MASS
        ? units.shown(Quantity.SMALL_MASS, G_PER_KG * entered.inside())
        : shown(entered, units);
  }

  /// A volume of something added: what a syringe measures is read in millilitres everywhere.
  static String shownVolume(double volumeL, ReadingUnits units) {
    return volumeL > 0 && volumeL < SYRINGE_L
        ? Unit.known(Quantity.VOLUME, "mL").shown(volumeL)
        : units.shown(Quantity.VOLUME, volumeL);
  }

  /// A count, which may say what is counted: "2 packets"; or an amount of the usual unit.
  static Entered count(String text, Unit usual, String path) {
    String bare = text.strip().replaceFirst("(?i) *(packets?|packs?|sachets?)$", "");
    boolean counted = bare.length() < text.strip().length();
    Unit number = Unit.known(Quantity.NUMBER, Quantity.NUMBER.inside().symbol());
    Entered read = read(bare, counted ? number : usual, path);
    return new Entered(read.inside(), read.unit(), text.strip());
  }

  /// The unit a value is read in and the meaning of a bare number. Water is driven off by the hour,
  /// milligrams of bitterness are not those of salt, hops do not age by the minute, and nobody
  /// lives some centimetres above the sea.
  static Unit usual(String name, Quantity quantity, ReadingUnits units) {
    Unit usual = units.unit(name.startsWith("bitter") ? Quantity.BITTERNESS : quantity);
    String symbol =
        switch (usual.symbol()) {
          case "cm", "mm" -> name.startsWith(ALTITUDE) ? "m" : usual.symbol();
          case "in" -> name.startsWith(ALTITUDE) ? "ft" : usual.symbol();
          default -> usual.symbol();
        };
    if (name.startsWith("aged")) {
      return Unit.known(Quantity.TIME, "d");
    }
    String hourly = name.startsWith("evaporation") ? symbol.replace("/min", "/h") : symbol;
    return Unit.of(usual.quantity(), hourly).orElse(usual);
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
