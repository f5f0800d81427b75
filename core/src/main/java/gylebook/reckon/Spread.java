package gylebook.reckon;

import gylebook.units.AnyUnit;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Typed;
import gylebook.units.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/// Two amounts beside each other, taken for the one that they make together: a mass in a volume for
/// a dose, liquor and malt for a thickness, a thickness and malt for liquor, two gravities for how
/// far it falls.
///
/// @param amounts the amounts with the one in place of the two
/// @param says what was taken for what
@AnyUnit("divides an amount of one unit by one of another")
record Spread(List<Fit.Amounted> amounts, String says) {
  private static final MathContext DIGITS = new MathContext(6);
  private static final MathContext DROP = new MathContext(3);
  private static final double G_PER_KG = 1000;

  /// More of anything in a litre is malt in its liquor.
  private static final double DOSE_MOST_G_PER_L = 150;

  private static final Unit THICKNESS = Unit.known(Quantity.SPECIFIC_VOLUME, "L/kg");

  Spread {
    amounts = List.copyOf(amounts);
  }

  /// What may be meant, the likeliest first.
  static List<Spread> of(List<Fit.Amounted> amounts) {
    List<Spread> spreads = new ArrayList<>();
    for (int at = 0; at + 1 < amounts.size(); at++) {
      Fit.Amounted one = amounts.get(at);
      Fit.Amounted next = amounts.get(at + 1);
      int first = at;
      dose(one, next).ifPresent(dose -> spreads.add(0, joined(amounts, first, dose, List.of())));
      thickness(one, next)
          .or(() -> thickness(next, one))
          .ifPresent(each -> spreads.add(joined(amounts, first, each, List.of("thickness"))));
      liquor(one, next).ifPresent(litres -> spreads.add(poured(amounts, first, first, litres)));
      liquor(next, one).ifPresent(litres -> spreads.add(poured(amounts, first, first + 1, litres)));
      drop(one, next)
          .ifPresent(
              drop -> spreads.add(joined(amounts, first, drop, List.of("drop", "apparent"))));
    }
    return spreads;
  }

  private static Optional<String> dose(Fit.Amounted mass, Fit.Amounted volume) {
    OptionalDouble kg = inside(mass, Quantity.MASS.inside());
    OptionalDouble litres = inside(volume, Quantity.VOLUME.inside());
    double gPerL = above0(litres) ? G_PER_KG * kg.orElse(0) / litres.getAsDouble() : 0;
    return kg.isPresent() && above0(litres) && gPerL <= DOSE_MOST_G_PER_L
        ? Optional.of(digits(gPerL) + " g/L")
        : Optional.empty();
  }

  private static Optional<String> thickness(Fit.Amounted liquor, Fit.Amounted malt) {
    OptionalDouble litres = inside(liquor, Quantity.VOLUME.inside());
    OptionalDouble kg = inside(malt, Quantity.MASS.inside());
    return litres.isPresent() && above0(kg)
        ? Optional.of(digits(litres.getAsDouble() / kg.getAsDouble()) + " L/kg")
        : Optional.empty();
  }

  private static Optional<String> liquor(Fit.Amounted thickness, Fit.Amounted malt) {
    OptionalDouble each = inside(thickness, THICKNESS);
    OptionalDouble kg = inside(malt, Quantity.MASS.inside());
    return each.isPresent() && above0(kg)
        ? Optional.of(digits(each.getAsDouble() * kg.getAsDouble()) + " L")
        : Optional.empty();
  }

  private static Optional<String> drop(Fit.Amounted from, Fit.Amounted to) {
    OptionalDouble higher = plato(from);
    OptionalDouble lower = plato(to);
    boolean alike = from.bare() == to.bare() && !to.says("drop") && !from.says("drop");
    return alike
            && higher.isPresent()
            && lower.isPresent()
            && higher.getAsDouble() > lower.getAsDouble()
        ? Optional.of(
            new BigDecimal(higher.getAsDouble() - lower.getAsDouble()).round(DROP).toPlainString()
                + " °P")
        : Optional.empty();
  }

  private static OptionalDouble plato(Fit.Amounted amount) {
    boolean spindle = Habit.spindle(amount.text());
    return amount.bare() && !spindle
        ? OptionalDouble.empty()
        : read(amount.text(), ReadingUnits.METRIC.unit(Quantity.GRAVITY));
  }

  private static Spread joined(
      List<Fit.Amounted> amounts, int at, String made, List<String> before) {
    Fit.Amounted one = amounts.get(at);
    Fit.Amounted next = amounts.get(at + 1);
    List<Fit.Amounted> joined = new ArrayList<>(amounts);
    boolean dose = before.isEmpty();
    joined.set(
        at,
        new Fit.Amounted(
            made, false, dose ? one.before() : before, dose ? one.behind() : List.of()));
    joined.remove(at + 1);
    String says =
        dose
            ? "'%s' in '%s' was taken for %s."
            : before.contains("drop")
                ? "'%s' down to '%s' was taken for a drop of %s."
                : "'%s' and '%s' were taken for %s.";
    return new Spread(joined, says.formatted(one.text(), next.text(), made));
  }

  /// Liquor in place of the thickness; the malt stays.
  private static Spread poured(List<Fit.Amounted> amounts, int first, int thick, String litres) {
    Fit.Amounted each = amounts.get(thick);
    Fit.Amounted malt = amounts.get(thick == first ? first + 1 : first);
    List<Fit.Amounted> poured = new ArrayList<>(amounts);
    poured.set(thick, new Fit.Amounted(litres, false, List.of("liquor"), List.of()));
    String says = "'%s' for '%s' was taken for %s.".formatted(each.text(), malt.text(), litres);
    return new Spread(poured, says);
  }

  private static boolean above0(OptionalDouble value) {
    return value.isPresent() && value.getAsDouble() > 0;
  }

  private static String digits(double value) {
    return new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
  }

  private static OptionalDouble inside(Fit.Amounted amount, Unit unit) {
    return amount.bare() ? OptionalDouble.empty() : read(amount.text(), unit);
  }

  private static OptionalDouble read(String text, Unit unit) {
    return Typed.parse(text, unit) instanceof Typed.Read read
        ? OptionalDouble.of(read.entered().inside())
        : OptionalDouble.empty();
  }
}
