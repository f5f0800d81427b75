package gylebook.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/// Reads one typed amount: numbers and units in turn, then asks whether the whole makes sense.
@AnyUnit("reads amounts of any unit")
final class TypedText {
  private static final int LENGTH_MOST = 80;
  private static final Pattern JOINING = Pattern.compile("(?<=[a-z]) (?:and|&) (?=[\\d½¼¾⅓⅔⅛⅜⅝⅞])");
  private static final Pattern DEGREES = Pattern.compile("(?<=[\\d½¼¾⅓⅔⅛⅜⅝⅞]) ?deg(?:s|rees?)?$");
  private static final Pattern SECOND = Pattern.compile("(?:-|to|or|up to) ?[\\d.,½¼¾⅓⅔⅛⅜⅝⅞].*");
  private static final Pattern CLOCK = Pattern.compile("(\\d{1,3}):([0-5]?\\d)\\b.*");

  private final String typed;
  private final String text;
  private final Unit usual;
  private final Quantity quantity;

  TypedText(String typed, Unit usual) {
    this.typed = typed.strip();
    this.usual = usual;
    this.quantity = usual.quantity();
    this.text = typed.length() > LENGTH_MOST ? "" : plain(UnitText.normal(typed), quantity);
  }

  /// `1 lb and 4 oz` without the word between, `68 degrees` without the word behind.
  private static String plain(String normal, Quantity quantity) {
    String joined = JOINING.matcher(normal).replaceAll(" ");
    boolean degrees =
        quantity == Quantity.TEMPERATURE || quantity == Quantity.TEMPERATURE_DIFFERENCE;
    return degrees ? DEGREES.matcher(joined).replaceFirst("") : joined;
  }

  /// One number with its unit, if it has one.
  private record Part(NumberText.Found number, Optional<UnitText.Found> unit) {}

  Typed read() {
    if (typed.length() > LENGTH_MOST) {
      return unclear("That is too long for an amount.", example());
    }
    if (text.isEmpty()) {
      return unclear("Nothing is typed where " + article() + " is wanted.", example());
    }
    List<Part> parts = new ArrayList<>();
    int at = 0;
    while (at < text.length()) {
      Optional<NumberText.Found> number = NumberText.at(text, at);
      if (number.isEmpty()) {
        return noNumber(parts, at);
      }
      int behind = skipSpace(number.get().end());
      Optional<UnitText.Found> unit = UnitText.at(text, behind, quantity);
      parts.add(new Part(number.get(), unit));
      at = skipSpace(unit.map(UnitText.Found::end).orElse(behind));
    }
    return parts.size() == 1 ? one(parts.getFirst()) : joined(parts);
  }

  private Typed noNumber(List<Part> parts, int at) {
    String rest = text.substring(at);
    if (parts.isEmpty()) {
      return unclear("'" + typed + "' does not begin with a number.", example());
    }
    if (SECOND.matcher(rest).matches()) {
      return twoAmounts();
    }
    Matcher clock = CLOCK.matcher(text);
    if (quantity == Quantity.TIME && clock.matches()) {
      String first = clock.group(1);
      String second = clock.group(2);
      return unclear(
          "'" + typed + "' may be hours and minutes, or minutes and seconds.",
          "Write '%s h %s min' or '%s min %s s'.".formatted(first, second, first, second));
    }
    Optional<Unit> elsewhere = UnitText.anywhere(rest);
    if (elsewhere.isPresent()) {
      return unclear(
          "'"
              + rest
              + "' is a unit of "
              + elsewhere.get().quantity().words()
              + "; "
              + article()
              + " is wanted.",
          example());
    }
    return unclear("'" + rest + "' is no unit of " + quantity.words() + ".", example());
  }

  private Typed twoAmounts() {
    return unclear(
        "'" + typed + "' is two amounts, or from one to the other; one amount is wanted.",
        example());
  }

  /// In an imperial household a bare gallon is neither taken for the US one nor for its own.
  private Optional<Typed> whoseGallon(Part part) {
    return part.unit()
        .filter(_ -> usual.symbol().startsWith("imp "))
        .filter(found -> UnitText.imperialAlike(found).isPresent())
        .map(UnitText.Found::spelling)
        .map(
            spelling ->
                unclear(
                    "'" + typed + "' may be US or imperial.",
                    "Write 'US " + spelling + "' or 'imp " + spelling + "'."));
  }

  /// A share by a bare fraction, where shares are read in per cent, may be either.
  private Optional<Typed> whichShare(Part part) {
    double value = part.number().value();
    boolean either =
        quantity == Quantity.SHARE
            && usual.symbol().equals("%")
            && part.unit().isEmpty()
            && part.number().fraction()
            && value <= 1;
    return either
        ? Optional.of(
            unclear(
                "'" + typed + "' may be a share of the whole or of one per cent.",
                "Write %s or '%s %%'.".formatted(usual.shown(value), typed)))
        : Optional.empty();
  }

  private Typed one(Part part) {
    Optional<Typed> either = whoseGallon(part).or(() -> whichShare(part));
    if (either.isPresent()) {
      return either.get();
    }
    if (quantity == Quantity.GRAVITY) {
      return gravity(part);
    }
    if (part.number().thousandsToo()) {
      String point = part.number().text().replace(',', '.');
      String none = part.number().text().replace(",", "");
      return unclear(
          "'" + typed + "' may mean " + point + " or " + none + ".",
          "Write the one you mean: " + point + " or " + none + ".");
    }
    return checked(part.number().value(), part.unit().map(UnitText.Found::unit).orElse(usual));
  }

  /// A gravity says by its size what it is: 1.052 and 1052 are specific gravities, 52 is points.
  private Typed gravity(Part part) {
    double value = part.number().value();
    Optional<Unit> unit = part.unit().map(UnitText.Found::unit);
    Unit sg = Unit.known(Quantity.GRAVITY, "SG");
    if (unit.isPresent() && !unit.get().equals(sg)) {
      return checked(value, unit.get());
    }
    boolean written = unit.isPresent();
    if (value > 900 && value < 1300) {
      return checked(value / 1000, sg);
    }
    boolean likeSg = value >= 0.95 && value < 1.3;
    if (likeSg && (written || isSg(usual) || part.number().decimals() >= 3)) {
      return checked(value, sg);
    }
    if (!written && !isSg(usual) && !likeSg && value > -10 && value <= 40) {
      return checked(value, usual);
    }
    if (value > 40 && value <= 200) {
      return checked(value, Unit.known(Quantity.GRAVITY, "points"));
    }
    return unclear(
        "'" + typed + "' may be a specific gravity or degrees Plato.",
        "Write 1.052 for a specific gravity, 12.9 P for degrees Plato, 52 points for points.");
  }

  private static boolean isSg(Unit unit) {
    return unit.scale() instanceof Scale.Spindle;
  }

  /// `10 lb 4 oz`, `1h30`: each part smaller than one of the part before.
  private Typed joined(List<Part> parts) {
    if (parts.stream().skip(1).anyMatch(part -> part.number().text().startsWith("-"))) {
      return twoAmounts();
    }
    Optional<Typed> either = whoseGallon(parts.getFirst());
    if (either.isPresent()) {
      return either.get();
    }
    double inside = 0;
    Unit before = null;
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      boolean last = i == parts.size() - 1;
      Optional<Unit> unit = unitOf(part, last, before);
      double value = part.number().value();
      if (unit.isEmpty() || !unit.get().joins()) {
        return unclear("'" + typed + "' has a number without a unit.", example());
      }
      boolean odd = part.number().thousandsToo() || part.number().text().startsWith(",");
      if (value < 0 || odd || (!last && value != Math.rint(value))) {
        return unclear("'" + typed + "' is not clear.", "Write one number with one unit.");
      }
      double amount = unit.get().toInside(value);
      if (before != null && !(amount < before.toInside(1) * (1 - 1e-9))) {
        return unclear(
            "The part '" + part.number().text() + "' is not less than 1 " + before.symbol() + ".",
            "Write one number with one unit.");
      }
      inside += amount;
      before = unit.get();
    }
    Unit first = parts.getFirst().unit().map(UnitText.Found::unit).orElse(usual);
    return withinReason(inside, first);
  }

  /// The pints after an imperial gallon are imperial; minutes follow an hour unsaid.
  private Optional<Unit> unitOf(Part part, boolean last, @Nullable Unit before) {
    if (before == null) {
      return part.unit().map(UnitText.Found::unit);
    }
    if (part.unit().isEmpty()) {
      return last ? below(before) : Optional.empty();
    }
    boolean imperial = before.symbol().startsWith("imp ");
    return part.unit()
        .map(found -> imperial ? UnitText.imperialAlike(found).orElse(found.unit()) : found.unit());
  }

  private Optional<Unit> below(Unit before) {
    return switch (quantity == Quantity.TIME ? before.symbol() : "") {
      case "d" -> Unit.of(Quantity.TIME, "h");
      case "h" -> Unit.of(Quantity.TIME, "min");
      case "min" -> Unit.of(Quantity.TIME, "s");
      default -> Optional.empty();
    };
  }

  private Typed checked(double value, Unit unit) {
    if (quantity == Quantity.GRAVITY && isSg(unit)) {
      boolean points = unit.symbol().equals("points");
      double sg = points ? 1 + value / 1000 : value;
      if (!(sg >= 0.95 && sg < 1.3)) {
        return unclear(
            "'" + typed + "' is outside what a gravity can be (0.950 to 1.300).", example());
      }
    }
    return withinReason(unit.toInside(value), unit);
  }

  private Typed withinReason(double inside, Unit unit) {
    double least = quantity.least();
    double most = quantity.most();
    double slack = 1e-9 * (most - least);
    if (inside < least && least == 0) {
      return unclear("A " + quantity.words() + " cannot be below 0; got '" + typed + "'.", "");
    }
    if (!(inside >= least - slack && inside <= most + slack)) {
      boolean bare = !typed.contains("%");
      boolean percent = bare && quantity == Quantity.SHARE && inside > most && inside <= 100 * most;
      String maybe = percent ? "Maybe you mean " + typed + " %?" : "";
      return unclear(
          "'"
              + typed
              + "' is outside what is sensible: "
              + unit.shown(least)
              + " to "
              + unit.shown(most)
              + ".",
          maybe);
    }
    return new Typed.Read(new Entered(inside, unit, typed));
  }

  private String article() {
    return "a " + quantity.words();
  }

  private String example() {
    String amount = quantity == Quantity.TIME ? "90 min" : usual.shown(exampleInside());
    return "For example: " + amount + ".";
  }

  private double exampleInside() {
    return switch (quantity) {
      case MASS -> 4.5;
      case SMALL_MASS -> 30;
      case VOLUME -> 19;
      case TEMPERATURE -> 66;
      case GRAVITY -> 12.9;
      case PRESSURE -> 101.3;
      case POWER -> 2400;
      case SHARE -> 0.75;
      case PH -> 5.4;
      case LENGTH -> 0.35;
      case FLOW -> 0.1;
      case VOLTAGE -> 230;
      default -> 10;
    };
  }

  private int skipSpace(int at) {
    int end = at;
    while (end < text.length() && text.charAt(end) == ' ') {
      end++;
    }
    return end;
  }

  private Typed unclear(String what, String maybe) {
    return new Typed.Unclear(what, typed, maybe);
  }
}
