package gylebook.reckon;

import gylebook.units.AnyUnit;
import gylebook.units.Quantity;
import gylebook.units.Typed;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// What a water report says of its ions, in the unit that is asked for: milligrams for equivalents,
/// calcium carbonate for what it stands for, degrees of hardness.
///
/// A milligram is worth what its name says, calcium 1/20.04 meq; an alkalinity without more words
/// is one as calcium carbonate, as reports print it. How it was taken is always said.
@AnyUnit("turns amounts of one unit into another")
final class Ions {
  /// Behind a number: as calcium carbonate, and degrees of hardness. No letter of these is lost, or
  /// the number would be another.
  static final String CARBONATE = "mg/L-CaCO3";

  static final String GERMAN = "dH";
  static final String FRENCH = "fH";

  /// Milligrams a milliequivalent, by standard atomic weights.
  private static final Map<String, Double> MG_PER_MEQ =
      Map.of(
          "calcium",
          20.04,
          "magnesium",
          12.15,
          "bicarbonate",
          61.02,
          "alkalinity",
          50.04,
          "residual",
          50.04,
          "carbonate",
          50.04,
          "german",
          17.848,
          "french",
          10.0);

  private static final double CARBONATE_MG_PER_MEQ = 50.04;
  private static final Set<String> ALKALINE =
      Set.of("alkalinity", "residual", "carbonate", "bicarbonate", "german", "french");
  private static final MathContext DIGITS = new MathContext(4);
  private static final Pattern STANDS_FOR =
      Pattern.compile("([0-9.,]+) ?(mg/L-CaCO3|dH|fH)", Pattern.CASE_INSENSITIVE);

  private static final Pattern EQUIVALENTS = Pattern.compile("(?i)(\\d+(?:[.,]\\d+)?) ?meq/l");
  private static final Pattern MILLIGRAMS = Pattern.compile("(?i).*\\d ?(mg/l|ppm)");

  private Ions() {}

  /// What a typed amount is worth at an input in meq/L, mg/L or degrees; empty when nothing is.
  static Optional<Bridge.Crossed> cross(Named wanted, Fit.Amounted amount) {
    List<String> stem = wanted.unitName().map(name -> name.stem()).orElse(List.of());
    String ion = stem.isEmpty() ? "" : stem.getFirst();
    boolean degrees = ion.equals("german") || ion.equals("french");
    String unit = wanted.symbol();
    if (!MG_PER_MEQ.containsKey(ion) || !(degrees || Set.of("meq/L", "mg/L").contains(unit))) {
      return Optional.empty();
    }
    OptionalDouble stands = standsForMg(amount.text());
    boolean hardness = amount.says("calcium", "ca", "magnesium", "mg");
    if (stands.isPresent() && (ALKALINE.contains(ion) || hardness)) {
      double meq = stands.getAsDouble() / CARBONATE_MG_PER_MEQ;
      return Optional.of(crossed(meq, ion, unit, amount.text()));
    }
    OptionalDouble equivalents = equivalents(amount.text());
    boolean named = amount.says(ion, ALKALINE.contains(ion) ? "alkalinity" : ion);
    if (equivalents.isPresent() && named && !unit.equals("meq/L")) {
      return Optional.of(crossed(equivalents.getAsDouble(), ion, unit, amount.text()));
    }
    boolean gas = ALKALINE.contains(ion) && amount.says("bicarbonate", "hco3", "bicarb");
    boolean carbonate = ion.equals("bicarbonate") && !gas && amount.before().contains("alkalinity");
    boolean other = (gas && !ion.equals("bicarbonate")) || carbonate;
    OptionalDouble mg =
        unit.equals("meq/L") || other ? inside(amount, carbonate) : OptionalDouble.empty();
    if (mg.isEmpty()) {
      return Optional.empty();
    }
    String as = gas ? "bicarbonate" : ALKALINE.contains(ion) ? "calcium carbonate" : ion;
    String measured = gas ? "bicarbonate" : carbonate ? "carbonate" : ion;
    double each = MG_PER_MEQ.getOrDefault(measured, CARBONATE_MG_PER_MEQ);
    return Optional.of(crossed(mg.getAsDouble() / each, ion, unit, amount.text() + " as " + as));
  }

  private static Bridge.Crossed crossed(double meq, String ion, String unit, String how) {
    boolean equivalents = unit.equals("meq/L");
    boolean degrees = ion.equals("german") || ion.equals("french");
    double each =
        degrees
            ? CARBONATE_MG_PER_MEQ / MG_PER_MEQ.getOrDefault(ion, 1.0)
            : MG_PER_MEQ.getOrDefault(ion, 1.0);
    String number =
        new BigDecimal(equivalents ? meq : meq * each)
            .round(DIGITS)
            .stripTrailingZeros()
            .toPlainString();
    return new Bridge.Crossed(unit.isEmpty() ? number : number + " " + unit, how);
  }

  /// Milligrams of calcium carbonate that an amount stands for.
  private static OptionalDouble standsForMg(String text) {
    Matcher found = STANDS_FOR.matcher(text.strip());
    if (!found.matches()) {
      return OptionalDouble.empty();
    }
    String unit = found.group(2);
    double each = unit.equalsIgnoreCase(GERMAN) ? 17.848 : unit.equalsIgnoreCase(FRENCH) ? 10 : 1;
    try {
      return OptionalDouble.of(Double.parseDouble(found.group(1).replace(',', '.')) * each);
    } catch (NumberFormatException odd) {
      return OptionalDouble.empty();
    }
  }

  private static OptionalDouble equivalents(String text) {
    Matcher found = EQUIVALENTS.matcher(text.strip());
    return found.matches()
        ? OptionalDouble.of(Double.parseDouble(found.group(1).replace(',', '.')))
        : OptionalDouble.empty();
  }

  private static OptionalDouble inside(Fit.Amounted amount, boolean bare) {
    return (MILLIGRAMS.matcher(amount.text()).matches() || (bare && amount.bare()))
            && Typed.parse(amount.text(), Quantity.CONCENTRATION.inside())
                instanceof Typed.Read read
        ? OptionalDouble.of(read.entered().inside())
        : OptionalDouble.empty();
  }
}
