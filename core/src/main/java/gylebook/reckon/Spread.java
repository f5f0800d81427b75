package gylebook.reckon;

import gylebook.units.AnyUnit;
import gylebook.units.Quantity;
import gylebook.units.Typed;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/// A mass and a volume beside each other, taken for the dose that the one makes in the other.
///
/// @param amounts the amounts with the dose in place of the two
/// @param says what was taken for what
@AnyUnit("divides an amount of one unit by one of another")
record Spread(List<Fit.Amounted> amounts, String says) {
  private static final MathContext DIGITS = new MathContext(6);
  private static final double G_PER_KG = 1000;

  Spread {
    amounts = List.copyOf(amounts);
  }

  /// The first such pair; empty when there is none.
  static Optional<Spread> of(List<Fit.Amounted> amounts) {
    for (int i = 0; i + 1 < amounts.size(); i++) {
      OptionalDouble kg = inside(amounts.get(i), Quantity.MASS);
      OptionalDouble litres = inside(amounts.get(i + 1), Quantity.VOLUME);
      if (kg.isPresent() && litres.isPresent() && litres.getAsDouble() > 0) {
        double gPerL = G_PER_KG * kg.getAsDouble() / litres.getAsDouble();
        return Optional.of(joined(amounts, i, gPerL));
      }
    }
    return Optional.empty();
  }

  private static Spread joined(List<Fit.Amounted> amounts, int at, double gPerL) {
    Fit.Amounted mass = amounts.get(at);
    Fit.Amounted volume = amounts.get(at + 1);
    String dose = new BigDecimal(gPerL).round(DIGITS).toPlainString() + " g/L";
    List<Fit.Amounted> joined = new ArrayList<>(amounts);
    joined.set(at, new Fit.Amounted(dose, false, mass.before(), mass.behind()));
    joined.remove(at + 1);
    String says = "'%s' in '%s' was taken for %s.".formatted(mass.text(), volume.text(), dose);
    return new Spread(joined, says);
  }

  private static OptionalDouble inside(Fit.Amounted amount, Quantity quantity) {
    return !amount.bare()
            && Typed.parse(amount.text(), quantity.inside()) instanceof Typed.Read read
        ? OptionalDouble.of(read.entered().inside())
        : OptionalDouble.empty();
  }
}
